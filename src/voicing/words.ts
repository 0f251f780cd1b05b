import type { SoundingMidi } from "../base/index.ts";
import { degreeOf, displayDegree, pitchName, type Chord } from "../theory/index.ts";

const intervals = [
  "a unison",
  "a semitone",
  "a whole tone",
  "a minor third",
  "a major third",
  "a fourth",
  "a tritone",
  "a fifth",
  "a minor sixth",
  "a major sixth",
  "a minor seventh",
  "a major seventh",
  "an octave",
];

/**
 * An interval in words.
 * @param semitones - 0 or more
 * @returns "a fourth", "16 semitones"
 */
export function intervalWord(semitones: number): string {
  return intervals[semitones] ?? `${semitones} semitones`;
}

const numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

/**
 * A count with its noun.
 * @param count - whole number
 * @param noun - singular
 * @returns "two players", "12 semitones"
 */
export function countWord(count: number, noun: string): string {
  return `${numbers[count] ?? count} ${noun}${count === 1 ? "" : noun.endsWith("x") ? "es" : "s"}`;
}

/**
 * A pitch by its name in a chord, with ♭ and ♯.
 * @param midi - sounding pitch
 * @param chord - spells it
 * @returns "E♭4"
 */
export function nameIn(midi: SoundingMidi, chord: Chord): string {
  return pitchName(midi, chord, { signs: "unicode" });
}

const plain: Readonly<Record<string, string>> = {
  "1": "the root",
  b3: "the third",
  "3": "the third",
  "4": "the fourth",
  "5": "the fifth",
  b5: "the ♭5",
  "#5": "the ♯5",
  "6": "the sixth",
  b7: "the seventh",
  "7": "the seventh",
  bb7: "the seventh",
};

/**
 * What a pitch is in a chord, in words.
 * @param midi - sounding pitch
 * @param chord - the chord
 * @returns "the root", "the ♭9"
 */
export function roleWord(midi: SoundingMidi, chord: Chord): string {
  const degree = degreeOf(midi, chord);
  if (degree === "") return "a note without a chord";
  return plain[degree] ?? `the ${displayDegree(degree)}`;
}
