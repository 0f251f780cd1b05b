import { pitchClass, type Count } from "../base/index.ts";
import { LETTERS, LETTER_SEMITONES } from "./letter-table.ts";
import { spellOnLetter, spelledPitchClass, type FoundSpelling } from "./spelled-pitch.ts";
import { alterationOf } from "./signs.ts";
import type { AboveRoot } from "./chord-types.ts";
import type { SpelledPitchClass } from "./spelled-pitch-types.ts";

/** A degree of a chord, as players write it: accidental and number counted from the root. */
export interface Degree {
  /** 1 to 13; 9, 11 and 13 are 2, 4 and 6 an octave higher. */
  readonly number: Count;
  /** Semitones against the major scale on the root. */
  readonly alteration: Count;
  readonly aboveRoot: AboveRoot;
}

/**
 * Takes a degree label apart.
 * @param label - ASCII: "1", "b3", "bb7", "#11"
 * @returns number, alteration, semitones above the root
 * @throws RangeError when it is no degree label
 * @example parseDegree("b9") // { number: 9, alteration: -1, aboveRoot: 1 }
 */
export function parseDegree(label: string): Degree {
  const [, signs = "", digits = ""] = /^(b{0,2}|#{0,2})(\d+)$/.exec(label) ?? [];
  const number = Number(digits);
  if (number < 1 || number > 13) throw new RangeError(`a degree is 1 to 13, got "${label}"`);
  const letter = LETTERS[(number - 1) % 7] ?? "C";
  const alteration = alterationOf(signs);
  return { number, alteration, aboveRoot: pitchClass(LETTER_SEMITONES[letter] + alteration) };
}

/**
 * Spells a degree of a chord: the third of A♭ minor is C♭.
 * @param root - root of the chord
 * @param label - ASCII degree label
 * @returns the spelling; respelled where it would need three accidentals
 */
export function spellDegree(root: SpelledPitchClass, label: string): FoundSpelling {
  const { number, aboveRoot } = parseDegree(label);
  const sounding = pitchClass(spelledPitchClass(root) + aboveRoot);
  return spellOnLetter(LETTERS.indexOf(root.letter) + number - 1, sounding);
}

/**
 * A degree label for people.
 * @param label - ASCII: "b7"
 * @returns the same with ♭ and ♯
 * @example displayDegree("b7") // "♭7"
 */
export function displayDegree(label: string): string {
  return label.replace(/b/g, "♭").replace(/#/g, "♯");
}
