import type { SoundingMidi } from "../../base/index.ts";
import {
  instrumentOf,
  type Player,
  type Register,
  type SectionId,
  type SoundingRange,
} from "../../band/index.ts";

/** Whether a strip holds one instrument or a whole section. */
export type StripBy = "instrument" | "section";

/** One strip of the ladder: an instrument (or a section) with its compass behind the tokens. */
export interface Strip {
  readonly id: string;
  /** Short, for the ladder's head: "Trumpets", "B tbn". */
  readonly label: string;
  readonly section: SectionId;
  readonly players: readonly Player[];
  readonly range: SoundingRange;
  /** Registers of the instrument; none for a section of several. */
  readonly registers: readonly Register[];
  readonly x: number;
  readonly width: number;
  /** Tokens that stand side by side at their full width. */
  readonly slots: number;
}

const sectionNames: Readonly<Record<SectionId, string>> = {
  trumpets: "Trumpets",
  trombones: "Trombones",
  saxes: "Saxes",
  rhythm: "Rhythm",
};
const between = 5;
const widest = 60;

/**
 * Lays the strips side by side, an instrument with three players or more twice as wide.
 * @param players - the line-up, in its order
 * @param by - one strip an instrument, or one a section
 * @param left - where the first strip starts, CSS pixels
 * @param room - how much room there is, CSS pixels
 * @returns the strips, left to right
 */
export function ladderStrips(
  players: readonly Player[],
  by: StripBy,
  left: number,
  room: number,
): readonly Strip[] {
  const groups = new Map<string, Player[]>();
  for (const player of players) {
    const id = by === "instrument" ? player.instrument : player.section;
    groups.set(id, [...(groups.get(id) ?? []), player]);
  }
  const slotsOf = (members: readonly Player[]) => {
    if (by === "section") return Math.min(2, members.length);
    return members.length > 2 ? 2 : 1;
  };
  const entries = [...groups.entries()];
  const units = entries.reduce((sum, [, members]) => sum + slotsOf(members), 0);
  const unit = Math.min(
    by === "section" ? room : widest,
    (room - between * (entries.length - 1)) / Math.max(1, units),
  );
  let x = left;
  return entries.map(([id, members]) => {
    const slots = slotsOf(members);
    const width = unit * slots;
    const strip = { id, players: members, x, width, slots, ...aboutStrip(members, by) };
    x += width + between;
    return strip;
  });
}

function aboutStrip(members: readonly Player[], by: StripBy) {
  const first = members[0];
  if (first === undefined) throw new RangeError("a strip needs at least one player, got none");
  const instrument = instrumentOf(first.instrument);
  const low = Math.min(...members.map((player) => player.range.low));
  const high = Math.max(...members.map((player) => player.range.high));
  const range: SoundingRange = { low: low as SoundingMidi, high: high as SoundingMidi };
  const { section } = first;
  if (by === "section") return { label: sectionNames[section], section, range, registers: [] };
  const label = members.length > 2 ? sectionLabel(instrument.name) : shortName(first);
  return { label, section, range, registers: instrument.registers };
}

function sectionLabel(name: string): string {
  return `${name}s`;
}

/** The player's abbreviation without the number of the chair: "Ten 1" → "Ten". */
function shortName(player: Player): string {
  return player.abbreviation.replace(/\s*\d+$/, "").replace(". ", " ");
}

/**
 * A token's label when it is narrow: chair number in an instrument's strip, letter and number in
 * a section's.
 * @param player - whose token
 * @param by - what the strip holds
 * @returns one or two characters
 */
export function narrowLabel(player: Player, by: StripBy): string {
  const number = /\d+$/.exec(player.abbreviation)?.[0] ?? "";
  if (by === "instrument" && number !== "") return number;
  return player.abbreviation.charAt(0) + number;
}
