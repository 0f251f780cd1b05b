import type { Letter } from "./spelled-pitch-types.ts";

// Source: the diatonic scale on C, common practice.

/** The seven letters, C upwards. */
export const LETTERS: readonly Letter[] = Object.freeze(["C", "D", "E", "F", "G", "A", "B"]);

/** Semitones of each natural letter above C. */
export const LETTER_SEMITONES: Readonly<Record<Letter, number>> = Object.freeze({
  C: 0,
  D: 2,
  E: 4,
  F: 5,
  G: 7,
  A: 9,
  B: 11,
});

/**
 * How a sounding pitch class is named when no chord says otherwise: the spelling of the major key
 * with fewest accidentals, F sharp where six sharps and six flats are equal.
 */
export const PLAIN_SPELLINGS: readonly { readonly letter: Letter; readonly alteration: number }[] =
  Object.freeze([
    { letter: "C", alteration: 0 },
    { letter: "D", alteration: -1 },
    { letter: "D", alteration: 0 },
    { letter: "E", alteration: -1 },
    { letter: "E", alteration: 0 },
    { letter: "F", alteration: 0 },
    { letter: "F", alteration: 1 },
    { letter: "G", alteration: 0 },
    { letter: "A", alteration: -1 },
    { letter: "A", alteration: 0 },
    { letter: "B", alteration: -1 },
    { letter: "B", alteration: 0 },
  ]);
