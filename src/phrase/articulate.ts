import { quantity } from "../base/index.ts";
import {
  beatLength,
  placeOf,
  type Divisions,
  type HeardNote,
  type Melody,
} from "../theory/index.ts";
import { articulationRules, type ArticulationMark } from "./articulation-rule-table.ts";

/** Marks by note id: what the user set; an empty list means none. */
export type ArticulationChoices = Readonly<Record<string, readonly ArticulationMark[]>>;

/** Marks of a note, and the rule that gave them, if one did. */
export interface Articulated {
  readonly noteId: string;
  readonly marks: readonly ArticulationMark[];
  /** Meaning of the rule; empty when the user decided or no rule holds. */
  readonly reason: string;
}

/**
 * Articulation of every note: the user's, else the first rule of the style that holds.
 * @param melody - metre, division, style, length
 * @param notes - the heard notes in order
 * @param choices - what the user set
 * @returns one entry a note
 * @source articulation-rule-table.ts
 */
export function articulate(
  melody: Melody,
  notes: readonly HeardNote[],
  choices: ArticulationChoices,
): readonly Articulated[] {
  const beat = beatLength(melody);
  return notes.map((note, index) => {
    const chosen = choices[note.id];
    if (chosen) return { noteId: note.id, marks: chosen, reason: "" };
    const end = quantity<Divisions>(note.onset + note.duration);
    const isOnBeat = placeOf(melody, note.onset).part[0] === 0;
    const nextBeat = note.onset + beat - ((note.onset - melody.pickup + 64 * beat) % beat);
    const next = notes[index + 1];
    const seen = {
      beats: note.duration / beat,
      isOnBeat,
      isSyncopated: !isOnBeat && end > nextBeat,
      isBeforeRest: !next || next.onset > end,
    };
    const rule = articulationRules.find(
      ({ styles, holds }) => styles.includes(melody.style) && holds(seen),
    );
    return { noteId: note.id, marks: rule?.marks ?? [], reason: rule?.meaning ?? "" };
  });
}
