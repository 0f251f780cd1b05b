import type { Chord, SpelledPitchClass } from "../theory/index.ts";
import { CONCERT, moveSpelled, withoutDoubles, type Reading } from "./transposed-spelling.ts";
import { pitchClassText } from "./text-signs.ts";

function moved(spelled: SpelledPitchClass, reading: Reading): string {
  return pitchClassText(withoutDoubles(moveSpelled({ ...spelled, octave: 4 }, reading)));
}

/**
 * Chord symbol as a transposing player reads it; only root and slash bass change.
 * @param chord - concert chord
 * @param reading - from concert to written
 * @returns the symbol with ♭ and ♯: F13 for an alto sax is "D13"; unchanged for no chord
 */
export function symbolFor(chord: Chord, reading: Reading): string {
  const root = pitchClassText(chord.root);
  const isAtConcert = reading.steps === CONCERT.steps && reading.semitones === CONCERT.semitones;
  if (isAtConcert || chord.family === "no-chord" || !chord.display.startsWith(root))
    return chord.display;
  const slashBass = chord.hasSlashBass ? `/${pitchClassText(chord.bass)}` : "";
  const end = chord.display.length - slashBass.length;
  const suffix = chord.display.slice(root.length, end);
  return moved(chord.root, reading) + suffix + (slashBass && `/${moved(chord.bass, reading)}`);
}
