import type { Count, Semitones, SoundingMidi } from "../base/index.ts";
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
  "a minor ninth",
  "a major ninth",
  "a minor tenth",
  "a major tenth",
  "an eleventh",
  "an octave and a tritone",
  "a twelfth",
];

/**
 * An interval in words.
 * @param semitones - 0 or more
 * @returns with its article up to a twelfth, else in semitones
 * @example intervalWord(5) // "a fourth"
 * @example intervalWord(28) // "28 semitones"
 */
export function intervalWord(semitones: Semitones): string {
  return intervals[semitones] ?? `${semitones} semitones`;
}

const numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

/**
 * A count with its noun.
 * @param count - whole number
 * @param noun - singular; ends in x where the plural takes es
 * @returns words up to nine, figures above
 * @example countWord(2, "sax") // "two saxes"
 * @example countWord(12, "semitone") // "12 semitones"
 */
export function countWord(count: Count, noun: string): string {
  return `${numbers[count] ?? count} ${noun}${count === 1 ? "" : noun.endsWith("x") ? "es" : "s"}`;
}

/**
 * Several things in one phrase.
 * @param items - one or more
 * @returns with commas, and "and" before the last
 * @example listWords(["A3", "C4", "G4"]) // "A3, C4 and G4"
 */
export function listWords(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items[items.length - 1]}`;
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
  "9": "the ninth",
  "11": "the eleventh",
  "13": "the thirteenth",
};

/**
 * What a pitch is in a chord, in words.
 * @param midi - sounding pitch
 * @param chord - the chord
 * @returns "the root", "the ninth", "the ♭9"
 */
export function roleWord(midi: SoundingMidi, chord: Chord): string {
  const degree = degreeOf(midi, chord);
  if (degree === "") return "a note without a chord";
  return plain[degree] ?? `the ${displayDegree(degree)}`;
}
