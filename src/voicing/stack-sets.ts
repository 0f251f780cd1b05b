/**
 * Writes the candidate indices of a set of two words, highest note first.
 * @param high - first word of the set
 * @param low - second word
 * @param into - where to write
 * @returns how many were written
 */
export function readStack(high: number, low: number, into: Int32Array): number {
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
export function comesBefore(aHigh: number, aLow: number, bHigh: number, bLow: number): boolean {
  return aHigh === bHigh ? aLow >>> 0 > bLow >>> 0 : aHigh >>> 0 > bHigh >>> 0;
}
