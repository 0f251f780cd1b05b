import type { Count, Ratio } from "../base/index.ts";

const FIRST_CAPACITY = 128;
const NOT_KNOWN = -1;

/** Value of a pair of numbered things, reckoned on the first call only. */
export type PairMemory = (first: Count, second: Count, reckon: () => Ratio) => Ratio;

/**
 * Makes a memory of pairs that grows with the numbers asked for. The order within a pair counts.
 * @returns look-up of values of 0 or more
 */
export function pairMemory(): PairMemory {
  let capacity = FIRST_CAPACITY;
  let values = new Float64Array(capacity * capacity).fill(NOT_KNOWN);
  const grow = (needed: number): void => {
    const wider = Math.max(needed, 2 * capacity);
    const grown = new Float64Array(wider * wider).fill(NOT_KNOWN);
    for (let row = 0; row < capacity; row += 1)
      grown.set(values.subarray(row * capacity, (row + 1) * capacity), row * wider);
    values = grown;
    capacity = wider;
  };
  return (first, second, reckon) => {
    if (Math.max(first, second) >= capacity) grow(Math.max(first, second) + 1);
    const known = values[first * capacity + second]!;
    if (known !== NOT_KNOWN) return known;
    const value = reckon();
    values[first * capacity + second] = value;
    return value;
  };
}
