import { pitchClass, type Count, type PitchClass } from "../base/index.ts";
import { diatonicSevenths, scaleSteps } from "./melody-key-table.ts";
import type { Key } from "./melody-types.ts";
import { formatPitchClass, spelledPitchClass, type PitchFormat } from "./spelled-pitch.ts";
import type { Letter } from "./spelled-pitch-types.ts";

/**
 * Pitch classes of a key; a minor key has its leading tone as well.
 * @param key - the key
 * @returns pitch classes, tonic first, upwards
 * @source major scale; natural minor with the raised seventh: common practice, no single source
 * @example scaleOf({ tonic: { letter: "G", alteration: 0 }, mode: "major" }) // [7, 9, 11, 0, 2, 4, 6]
 */
export function scaleOf({ tonic, mode }: Key): readonly PitchClass[] {
  const root = spelledPitchClass(tonic);
  return scaleSteps[mode].map((step) => pitchClass(root + step));
}

/**
 * What follows the root in the symbol of the seventh chord that a key has on a pitch.
 * @param key - the key
 * @param root - pitch class of the chord's root
 * @returns "maj7", "m7", "7", "m7(b5)", "dim7"; undefined when the pitch is not in the key
 */
export function diatonicSuffix(key: Key, root: PitchClass): string | undefined {
  return diatonicSevenths[key.mode].get(pitchClass(root - spelledPitchClass(key.tonic)));
}

const fifthsOfLetter: Readonly<Record<Letter, number>> = Object.freeze({
  F: -1,
  C: 0,
  G: 1,
  D: 2,
  A: 3,
  E: 4,
  B: 5,
});

/**
 * Key signature as fifths from C, as MusicXML and MIDI files write it.
 * @param key - the key
 * @returns sharps above 0, flats below
 * @source W3C MusicXML 4.0, element fifths
 * @example fifthsOf({ tonic: { letter: "E", alteration: -1 }, mode: "major" }) // -3
 */
export function fifthsOf({ tonic, mode }: Key): Count {
  return fifthsOfLetter[tonic.letter] + 7 * tonic.alteration - (mode === "minor" ? 3 : 0);
}

/**
 * A key in words.
 * @param key - the key
 * @param format - which signs; ASCII unless said otherwise
 * @returns "Eb major"
 */
export function keyText(key: Key, format: PitchFormat = {}): string {
  return `${formatPitchClass(key.tonic, format)} ${key.mode}`;
}
