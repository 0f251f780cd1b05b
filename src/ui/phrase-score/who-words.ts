import type { SectionId } from "../../band/index.ts";
import type { PhraseInView } from "../phrase/phrase-store.ts";
import { capital } from "../hear/who-words.ts";
import { rhythmPlayers } from "./sound-plan.ts";

/** A section with its players, as they can be heard or left out. */
export interface HeardGroup {
  readonly section: SectionId;
  readonly name: string;
  readonly players: readonly { readonly id: string; readonly name: string }[];
}

const order: readonly SectionId[] = ["trumpets", "trombones", "saxes"];

/**
 * Who can be heard in a phrase, section by section, the rhythm section last.
 * @param view - the phrase
 * @returns sections that have players
 */
export function groupsOf({ phrase }: PhraseInView): readonly HeardGroup[] {
  const horns = order.map((section) => ({
    section,
    name: capital(section),
    players: phrase.players.filter((player) => player.section === section),
  }));
  const rhythm = { section: "rhythm" as const, name: "Rhythm", players: rhythmPlayers };
  return [...horns.filter(({ players }) => players.length > 0), rhythm];
}

/** Turns some ids of a list on or off. */
export function turned(
  list: readonly string[],
  ids: readonly string[],
  isIn: boolean,
): readonly string[] {
  const others = list.filter((id) => !ids.includes(id));
  return isIn ? [...others, ...ids] : others;
}
