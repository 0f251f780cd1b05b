import type { Count, Ratio } from "../base/index.ts";

/** Value of a pair of numbered things, reckoned on the first call only. */
export type PairMemory = (first: Count, second: Count, reckon: () => Ratio) => Ratio;

const BLOCK_BITS = 5;
const BLOCK_SIZE = 1 << BLOCK_BITS;

/**
 * Makes a memory of pairs, kept in short blocks: an engine may know thousands of notes of which few
 * meet, and those were mostly prepared together. The order within a pair counts.
 * @returns look-up of values
 */
export function pairMemory(): PairMemory {
  const rows: Float64Array[][] = [];
  const freshBlock = (): Float64Array => new Float64Array(BLOCK_SIZE).fill(NaN);
  return (first, second, reckon) => {
    const row = (rows[first] ??= []);
    const block = (row[second >> BLOCK_BITS] ??= freshBlock());
    const at = second & (BLOCK_SIZE - 1);
    const known = block[at]!;
    if (!Number.isNaN(known)) return known;
    const value = reckon();
    block[at] = value;
    return value;
  };
}
