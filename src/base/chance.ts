import type { Count } from "./quantities.ts";

/** Draws the next number of a seeded sequence, 0 (included) to 1 (excluded). */
export type Chance = () => number;

/**
 * A seeded sequence of numbers that looks random and repeats exactly (mulberry32: 32-bit integer
 * arithmetic only, so Node and every browser give the same numbers).
 * @param seed - any whole number
 * @returns a function that draws the next number, 0 to below 1
 * @source T. Ettinger, mulberry32 generator, public domain
 */
export function seededChance(seed: Count): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
