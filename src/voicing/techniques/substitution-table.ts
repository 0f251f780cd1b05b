import type { AboveRoot, ChordFamily } from "../../theory/index.ts";

/** The four places of a four-way voicing; every note fills one of them. */
export type Category = "root" | "third" | "fifth" | "seventh";

/**
 * Which tones may stand for which place. Semitones above the root, the tone the place is named
 * after first, then its substitutes in the order in which they are tried.
 */
export type CategoryRow = Readonly<Record<Category, readonly AboveRoot[]>>;

const row = (
  root: readonly AboveRoot[],
  third: readonly AboveRoot[],
  fifth: readonly AboveRoot[],
  seventh: readonly AboveRoot[],
): CategoryRow =>
  Object.freeze({
    root: Object.freeze(root),
    third: Object.freeze(third),
    fifth: Object.freeze(fifth),
    seventh: Object.freeze(seventh),
  });

/**
 * Tension substitution by chord family.
 * @source G. Lindsay, Jazz Arranging Techniques (2005), ch. 10, as carried by the
 *   elm-music-theory library (commit cbf09f1): sixth, seventh, suspended and diminished rows;
 *   thirteenth on minor sevenths: other schools allow it. Triads: common practice, no single
 *   source (a sixth or seventh counts as the fourth place once it is ticked).
 */
export const categoryRows: Readonly<Record<ChordFamily, CategoryRow>> = Object.freeze({
  major: row([0, 2], [4, 5], [7, 6], [9, 11]),
  minor: row([0, 2], [3], [7, 5], [9, 10, 11]),
  diminished: row([0, 2], [3, 5], [6, 8], [9, 11]),
  augmented: row([0, 2], [4], [8, 6], [10, 11, 9]),
  "suspended-fourth": row([0, 2], [5, 4], [7], [10, 9]),
  "suspended-second": row([0], [2, 5], [7], [10, 9, 11]),
  power: row([0], [], [7], []),
  sixth: row([0, 2], [4], [7, 6], [9, 11]),
  "minor-sixth": row([0, 2], [3], [7, 5], [9, 11]),
  "major-seventh": row([0, 2], [4], [7, 6, 8], [11, 9]),
  "minor-major-seventh": row([0, 2], [3], [7, 5, 8], [11, 9]),
  dominant: row([0, 2, 1, 3], [4, 5], [7, 9, 6, 8], [10]),
  "altered-dominant": row([0, 1, 3], [4, 5], [8, 6, 7, 9], [10]),
  "dominant-suspended": row([0, 2, 1, 3], [5, 4], [7, 9, 6, 8], [10]),
  "minor-seventh": row([0, 2], [3], [7, 5, 9, 8], [10]),
  "half-diminished": row([0, 2, 5], [3], [6, 8], [10]),
  "diminished-seventh": row([0, 2], [3, 5], [6, 8], [9, 11]),
  "no-chord": row([], [], [], []),
});

/** Places in the order in which a substitute is looked for. */
export const categories: readonly Category[] = Object.freeze(["root", "fifth", "seventh", "third"]);
