import type { StaffNote } from "../notation/index.ts";
import type { DrawnNote } from "./drawing-types.ts";
import type { DrawnHead } from "./music-staff.ts";
import { svgElement } from "./svg-element.ts";

/**
 * What the page needs to find a note again: data-midi (sounding) and data-player (ids, separated by
 * spaces, so that [data-player~="tpt1"] finds the notes of one player).
 * @param note - the note
 * @returns attributes
 */
export function noteTags(note: StaffNote): Readonly<Record<string, string>> {
  return {
    "data-midi": String(note.sounding),
    "data-player": note.players.map((player) => player.id).join(" "),
  };
}

/**
 * Marks a drawn note head: class, tags, and a title that pointers show.
 * @param head - the head
 */
export function tagHead({ group, note }: DrawnHead): void {
  if (!group) return;
  group.classList.add("staff-note");
  for (const [name, value] of Object.entries(noteTags(note))) group.setAttribute(name, value);
  const names = note.players.map((player) => player.name).join(", ");
  const text = [note.name, note.degreeText, names].filter(Boolean).join(", ");
  group.prepend(svgElement("title", {}, text));
}

/**
 * Where a head stands, for the page.
 * @param head - the head, in CSS pixels
 * @returns staff, pitch, players and place
 */
export function drawnNote({ staffId, note, x, y }: DrawnHead): DrawnNote {
  const playerIds = note.players.map((player) => player.id);
  return { staffId, midi: note.sounding, playerIds, x, y };
}
