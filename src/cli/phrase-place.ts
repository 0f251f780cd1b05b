import { placeOf, type Divisions, type Melody } from "../theory/index.ts";

/**
 * A place in a melody as data.
 * @param melody - metre, pickup, division
 * @param onset - from the start
 * @returns quarter notes from the start; bar (0 the pickup) and beat, the latter with its fraction
 */
export function melodyPlace(melody: Melody, onset: Divisions) {
  const { bar, beat, part } = placeOf(melody, onset);
  const [numerator, denominator] = part;
  const at = beat + numerator / denominator;
  return { at: onset / melody.division, bar, beat: Math.round(at * 1000) / 1000 };
}
