import type { Player, SectionId } from "../../band/index.ts";
import type { Backing, Who } from "../actions/sound-state.ts";
import { counted } from "../words/counts.ts";

/** What sounds under the horns, in words. */
export const backingTexts: Readonly<Record<Backing, string>> = Object.freeze({
  horns: "Horns only",
  bass: "With bass",
  "bass-piano": "With bass and piano",
  rhythm: "With bass, piano and drums",
});

/** The players of a section, by id. */
export function idsOfSection(players: readonly Player[], section: SectionId): readonly string[] {
  return players.filter((player) => player.section === section).map(({ id }) => id);
}

/** The section that is exactly the players chosen, if they are one. */
export function sectionChosen(players: readonly Player[], who: Who): SectionId | undefined {
  const sections = [...new Set(players.map(({ section }) => section))];
  return sections.find((section) => {
    const ids = idsOfSection(players, section);
    return ids.length === who.playerIds.length && ids.every((id) => who.playerIds.includes(id));
  });
}

/** Who is heard, in words: "Trumpets alone", "3 players against the rest"; empty for everybody. */
export function whoWords(players: readonly Player[], who: Who): string {
  const { playerIds, others } = who;
  if (playerIds.length === 0) return "";
  const section = sectionChosen(players, who);
  const only = players.find(({ id }) => playerIds.length === 1 && id === playerIds[0]);
  const name = only?.name ?? section ?? counted(playerIds.length, "player");
  return `${capital(name)} ${others === "silent" ? "alone" : "against the rest"}`;
}

/** A word as it begins a line. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
