import type { Count } from "../base/index.ts";
import type { Player, SectionId } from "../band/index.ts";
import type { StaffPlayer } from "./staff-layout-types.ts";

/** Sections as the ladder has them, brass first. */
const NAMING_ORDER: readonly SectionId[] = ["trumpets", "trombones", "saxes", "rhythm"];
/** Sections down a big-band score. */
const SCORE_ORDER: readonly SectionId[] = ["saxes", "trumpets", "trombones", "rhythm"];

/**
 * What a staff needs to know of a player.
 * @param player - the player
 * @returns id, names and section
 */
export function staffPlayerOf(player: Player): StaffPlayer {
  const { id, name, abbreviation, section } = player;
  return { id, name, abbreviation, section };
}

function sortBy<T>(
  items: readonly T[],
  order: readonly SectionId[],
  sectionOf: (item: T) => SectionId,
): readonly T[] {
  return order.flatMap((section) => items.filter((item) => sectionOf(item) === section));
}

/**
 * Players of one note in the order they are named: trumpets, trombones, saxes, rhythm.
 * @param players - in line-up order
 * @returns the same players; line-up order kept inside a section
 */
export function inNamingOrder(players: readonly StaffPlayer[]): readonly StaffPlayer[] {
  return sortBy(players, NAMING_ORDER, (player) => player.section);
}

/**
 * Items in the order of a big-band score: saxes, trumpets, trombones, rhythm. A doubling player
 * keeps the place of the chair.
 * @param items - in line-up order
 * @param sectionOf - section of an item
 * @returns the same items; line-up order kept inside a section
 * @source Metropole Orkest library, score and parts specifications (score order, player order)
 */
export function inScoreOrder<T>(
  items: readonly T[],
  sectionOf: (item: T) => SectionId,
): readonly T[] {
  return sortBy(items, SCORE_ORDER, sectionOf);
}

/** Players of one section on one note, with their names run together. */
export interface SectionNames {
  readonly section: SectionId;
  /** One entry for each kind of chair: "Tbn 1–3", "B. Tbn". */
  readonly names: readonly string[];
}

/** "1–3, 5": neighbours from three on as a range. */
function chairsText(chairs: readonly Count[]): string {
  const runs: { first: Count; last: Count }[] = [];
  for (const chair of chairs) {
    const run = runs.at(-1);
    if (run && run.last === chair - 1) run.last = chair;
    else runs.push({ first: chair, last: chair });
  }
  return runs
    .map(({ first, last }) => {
      if (first === last) return `${first}`;
      return last - first === 1 ? `${first}, ${last}` : `${first}–${last}`;
    })
    .join(", ");
}

function runTogether(abbreviations: readonly string[]): readonly string[] {
  const runs: { readonly stem: string; readonly chairs: Count[] }[] = [];
  for (const abbreviation of abbreviations) {
    const [, stem = abbreviation, chair] = /^(.*) (\d+)$/.exec(abbreviation) ?? [];
    const last = runs.at(-1);
    const run = last?.stem === stem ? last : { stem, chairs: [] };
    if (run !== last) runs.push(run);
    if (chair) run.chairs.push(Number(chair));
  }
  return runs.map(({ stem, chairs }) => [stem, chairsText(chairs)].filter(Boolean).join(" "));
}

/**
 * Short names of the players on one note, section by section.
 * @param players - in naming order
 * @returns one entry a section that takes part
 * @example four trumpets and two altos // names ["Tpt 1–4"] and ["Alto 1, 2"]
 */
export function namesBySection(players: readonly StaffPlayer[]): readonly SectionNames[] {
  return NAMING_ORDER.map((section) => {
    const own = players.filter((player) => player.section === section);
    return { section, names: runTogether(own.map((player) => player.abbreviation)) };
  }).filter(({ names }) => names.length > 0);
}
