import type { AboveRoot, ChordTone } from "./chord-types.ts";
import { FOREIGN_DEGREES } from "./foreign-degree-table.ts";

/**
 * What players call a note that is no tone of the chord.
 * @param aboveRoot - semitones above the root, 0 to 11
 * @param tones - the chord's tones
 * @returns ASCII degree label
 */
export function foreignDegree(aboveRoot: AboveRoot, tones: readonly ChordTone[]): string {
  const isMinor = tones.some((tone) => tone.degree === "b3");
  const hasSeventh = tones.some((tone) => tone.role === "seventh" && tone.kind === "stated");
  const degree = (isMinor ? FOREIGN_DEGREES.minorThird : FOREIGN_DEGREES.majorThird)[aboveRoot];
  if (degree === undefined)
    throw new RangeError(`semitones above the root must be 0 to 11, got ${aboveRoot}`);
  return hasSeventh ? degree : degree.replace("13", "6");
}
