import type { HeardNote, Melody } from "../theory/index.ts";
import { articulationRules, type ArticulationMark } from "./articulation-rule-table.ts";
import { pulseOf } from "./swing.ts";

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
  const pulse = pulseOf(melody);
  return notes.map((note, index) => {
    const chosen = choices[note.id];
    if (chosen) return { noteId: note.id, marks: chosen, reason: "" };
    const position = note.onset - melody.pickup;
    const end = position + note.duration;
    const isOnBeat = position % pulse === 0;
    const nextBeat = pulse * (Math.floor(position / pulse) + 1);
    const next = notes[index + 1];
    const seen = {
      beats: note.duration / pulse,
      isOnBeat,
      isSyncopated: !isOnBeat && end > nextBeat,
      isBeforeRest: !next || next.onset > note.onset + note.duration,
    };
    const rule = articulationRules.find(
      ({ styles, holds }) => styles.includes(melody.style) && holds(seen),
    );
    return { noteId: note.id, marks: rule?.marks ?? [], reason: rule?.meaning ?? "" };
  });
}
