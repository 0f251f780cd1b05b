import type { SpelledPitch } from "../theory/index.ts";
import type { AccidentalSign } from "./staff-layout-types.ts";

const SIGNS: Readonly<Record<number, AccidentalSign>> = {
  [-2]: "double-flat",
  [-1]: "flat",
  [1]: "sharp",
  [2]: "double-sharp",
};

/**
 * The sign in front of each note of one chord, without a key signature. An altered note shows its
 * sign in every octave. A natural one shows a natural only where the same letter is altered
 * elsewhere in the chord, so that nobody has to guess.
 * @param notes - all pitches read together (both staves of a grand staff), any order
 * @returns one sign a pitch, in the order given
 * @source Indiana University composition department, Music Notation Style Guide (accidental
 * repeated in every octave); C. Sapp, courtesy accidentals (same letter in another octave or staff)
 */
export function accidentalSigns(notes: readonly SpelledPitch[]): readonly AccidentalSign[] {
  const altered = new Set(notes.filter((note) => note.alteration !== 0).map((note) => note.letter));
  return notes.map((note) => {
    if (note.alteration === 0) return altered.has(note.letter) ? "natural" : "none";
    return SIGNS[note.alteration] ?? "none";
  });
}
