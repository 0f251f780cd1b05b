import type { Count } from "../base/index.ts";
import { fifthsOf, type Key } from "../theory/index.ts";
import type { Reading } from "./transposed-spelling.ts";

/**
 * Fifths that an interval adds to a key signature.
 * @param reading - letter steps and semitones
 * @returns sharps above 0, flats below
 */
export function fifthsAdded({ steps, semitones }: Reading): Count {
  return 7 * semitones - 12 * steps;
}

/**
 * The interval to the key a player reads; a key of more than six signs is read enharmonically.
 * @param strict - the instrument's own interval
 * @param key - concert key
 * @returns the interval, a letter step further where that saves signs
 * @source common practice, no single source
 */
export function keyReading(strict: Reading, key: Key): Reading {
  const fifths = fifthsOf(key) + fifthsAdded(strict);
  if (Math.abs(fifths) <= 6) return strict;
  return { ...strict, steps: (strict.steps + Math.sign(fifths)) as Reading["steps"] };
}
