import { fifthsOf, type Key } from "../../theory/index.ts";

/** Order in which sharps are added to a key signature; flats go the other way. */
const ORDER = Object.freeze(["F", "C", "G", "D", "A", "E", "B"] as const);

/**
 * Alterations that a key signature gives.
 * @param key - the key
 * @returns letter → semitones; letters that stay plain are not in it
 * @source order of sharps and flats in key signatures, common practice
 */
export function signatureOfKey(key: Key): ReadonlyMap<string, number> {
  const fifths = fifthsOf(key);
  if (fifths >= 0) return new Map(ORDER.slice(0, fifths).map((letter) => [letter, 1]));
  return new Map(ORDER.slice(fifths).map((letter) => [letter, -1]));
}
