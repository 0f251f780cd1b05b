import type { SpelledPitch } from "../theory/index.ts";

const SPOKEN: Readonly<Record<number, string>> = {
  [-2]: " double flat",
  [-1]: " flat",
  [0]: "",
  [1]: " sharp",
  [2]: " double sharp",
};

/**
 * Name of a pitch to be read aloud; screen readers skip ♭ and ♯ or name them oddly.
 * @param spelled - letter, alteration, octave
 * @returns "B flat 3", "D5"
 */
export function pitchSpoken(spelled: SpelledPitch): string {
  const sign = SPOKEN[spelled.alteration] ?? "";
  return sign ? `${spelled.letter}${sign} ${spelled.octave}` : `${spelled.letter}${spelled.octave}`;
}

/**
 * A degree with the signs that text fonts have: a double flat is two flats.
 * @param degree - ASCII: "b7", "#11", "bb7"
 * @returns "♭7", "♯11", "♭♭7"
 */
export function degreeText(degree: string): string {
  return degree.replaceAll("b", "♭").replaceAll("#", "♯");
}

const ORDINALS: Readonly<Record<string, string>> = {
  "1": "root",
  "2": "second",
  "3": "third",
  "4": "fourth",
  "5": "fifth",
  "6": "sixth",
  "7": "seventh",
  "9": "ninth",
  "11": "eleventh",
  "13": "thirteenth",
};
/** Degrees that players do not call by flat, sharp and number. */
const OWN_WORDS: Readonly<Record<string, string>> = {
  b3: "minor third",
  "7": "major seventh",
  bb7: "diminished seventh",
};

/**
 * A degree as players say it.
 * @param degree - ASCII: "b7", "#11", "13"
 * @returns "flat seventh", "sharp eleventh", "thirteenth"; the degree as it stands when unknown
 */
export function degreeSpoken(degree: string): string {
  const own = OWN_WORDS[degree];
  if (own) return own;
  const [, signs = "", figure = ""] = /^([b#]*)(\d+)$/.exec(degree) ?? [];
  const ordinal = ORDINALS[figure];
  if (!ordinal) return degree;
  const words = [...signs].map((sign) => (sign === "b" ? "flat " : "sharp "));
  return words.join("") + ordinal;
}
