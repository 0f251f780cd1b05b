import type { Count } from "../base/index.ts";

/** 32 bits of a set, as a signed or unsigned whole number. */
export type SetWord = number;

/**
 * Sets bit `index` in a pair of words. Index i < 32 is bit 31 − i of the first word, so that
 * comparing words as unsigned numbers compares sets with the lower indices first.
 * @param intoWords - sets of two words each
 * @param at - first word of the set
 * @param index - 0 to 63
 */
export function addToSet(intoWords: Int32Array, at: Count, index: Count): void {
  const word = index < 32 ? at : at + 1;
  intoWords[word] = (intoWords[word] ?? 0) | (1 << (31 - (index & 31)));
}

/**
 * Tells whether an index is in a set of two words.
 * @param high - first word
 * @param low - second word
 * @param index - 0 to 63
 * @returns true when it is
 */
export function isInSet(high: SetWord, low: SetWord, index: Count): boolean {
  return (((index < 32 ? high : low) >>> (31 - (index & 31))) & 1) === 1;
}

/**
 * Writes the candidate indices of a set of two words, highest note first.
 * @param high - first word of the set
 * @param low - second word
 * @param into - where to write
 * @returns how many were written
 */
export function readStack(high: SetWord, low: SetWord, into: Int32Array): Count {
  let count = 0;
  let word = high >>> 0;
  let first = 0;
  for (let round = 0; round < 2; round++) {
    while (word !== 0) {
      const bit = Math.clz32(word);
      into[count++] = first + bit;
      word = (word & ~(0x80000000 >>> bit)) >>> 0;
    }
    word = low >>> 0;
    first = 32;
  }
  return count;
}

/**
 * Tells whether set a comes before set b: the higher notes decide first.
 * @param aHigh - first word of set a
 * @param aLow - second word of set a
 * @param bHigh - first word of set b
 * @param bLow - second word of set b
 * @returns true when a comes first
 */
export function comesBefore(aHigh: SetWord, aLow: SetWord, bHigh: SetWord, bLow: SetWord): boolean {
  return aHigh === bHigh ? aLow >>> 0 > bLow >>> 0 : aHigh >>> 0 > bHigh >>> 0;
}

/**
 * How many bits are set.
 * @param set - up to 32 bits
 * @returns 0 to 32
 * @source halves added up in parallel: H. S. Warren, Hacker's Delight (2002), chapter 5
 * @example bitsIn(0b1011) // 3
 */
export function bitsIn(set: SetWord): Count {
  const pairs = set - ((set >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
