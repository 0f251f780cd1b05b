import { formatPitchClass, type Chord, type SpelledPitchClass } from "../theory/index.ts";
import { CONCERT, moveSpelled, withoutDoubles, type Reading } from "./transposed-spelling.ts";

function printed(spelled: SpelledPitchClass): string {
  return formatPitchClass(spelled, { signs: "unicode" });
}

function moved(spelled: SpelledPitchClass, reading: Reading): string {
  return printed(withoutDoubles(moveSpelled({ ...spelled, octave: 4 }, reading)));
}

/**
 * Chord symbol as a transposing player reads it; only root and slash bass change.
 * @param chord - concert chord
 * @param reading - from concert to written
 * @returns the symbol with ♭ and ♯: F13 for an alto sax is "D13"; unchanged for no chord
 */
export function symbolFor(chord: Chord, reading: Reading): string {
  const root = printed(chord.root);
  const isAtConcert = reading.steps === CONCERT.steps && reading.semitones === CONCERT.semitones;
  if (isAtConcert || chord.family === "no-chord" || !chord.display.startsWith(root))
    return chord.display;
  const slashBass = chord.hasSlashBass ? `/${printed(chord.bass)}` : "";
  const end = chord.display.length - slashBass.length;
  const suffix = chord.display.slice(root.length, end);
  return moved(chord.root, reading) + suffix + (slashBass && `/${moved(chord.bass, reading)}`);
}
