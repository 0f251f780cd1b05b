/**
 * How strongly an interval above a candidate supports it as the root, by semitones 0 to 11. The
 * first set is the article's, the second its author's later revision.
 * @source R. Parncutt 1988, Music Perception 6, 65 (first); R. Parncutt 2006, commentary on Cook and
 *   Fujisawa, Empirical Musicology Review 1, 204 (second)
 */
export const ROOT_SUPPORTS = Object.freeze({
  1988: Object.freeze([1, 0, 1 / 5, 1 / 10, 1 / 3, 0, 0, 1 / 2, 0, 0, 1 / 4, 0]),
  2006: Object.freeze([10, 0, 1, 0, 3, 0, 0, 5, 0, 0, 2, 0]),
}) satisfies Readonly<Record<number, readonly number[]>>;
