import type { ChordFamily } from "./chord-types.ts";

/** Notes a family may take besides its own, as degree labels. */
export interface TensionRow {
  /** What the preset `tensions` ticks. */
  readonly natural: readonly string[];
  /** What players may add besides. */
  readonly further: readonly string[];
  /** In the scale, but not sounded against the chord. */
  readonly avoid: readonly string[];
  readonly source: string;
}

const LINDSAY = "substitutions after G. Lindsay, Jazz Arranging Techniques, 2005, ch. 10";
const COMMON = "common practice, no single source";
const row = (
  natural: readonly string[],
  further: readonly string[],
  avoid: readonly string[],
  source: string,
): TensionRow => Object.freeze({ natural, further, avoid, source });

/**
 * Tensions by chord family. Bare triads have none in the preset: no list of substitutions names
 * them, and the symbol asks for a triad. A dominant's ♭9 ♯9 ♯11 ♭13 are altered tensions.
 * Source: each row names its own.
 */
export const TENSIONS: Readonly<Record<ChordFamily, TensionRow>> = Object.freeze({
  major: row([], ["9", "6"], ["11"], COMMON),
  minor: row([], ["9", "11"], [], COMMON),
  diminished: row([], ["9", "11", "b13"], [], `row of dim7: ${LINDSAY}`),
  augmented: row([], ["9", "#11"], [], COMMON),
  "suspended-fourth": row([], ["9", "6"], [], COMMON),
  "suspended-second": row([], ["6"], [], COMMON),
  power: row([], [], [], COMMON),
  sixth: row(["9"], ["#11", "7"], ["11"], LINDSAY),
  "minor-sixth": row(["9", "11"], ["7"], [], `${LINDSAY}; 7: melodic minor, ${COMMON}`),
  "major-seventh": row(["9", "13"], ["#11"], ["11"], LINDSAY),
  "minor-major-seventh": row(["9", "11", "13"], [], [], `melodic minor, ${COMMON}`),
  // J. Mulholland: the 11th is not available on a dominant, the tonic works against it.
  dominant: row(["9", "13"], ["b9", "#9", "#11", "b13"], ["11"], LINDSAY),
  "altered-dominant": row([], [], ["11"], COMMON),
  "dominant-suspended": row(["9", "13"], ["b9", "#9", "3", "b13"], [], LINDSAY),
  "minor-seventh": row(["9", "11"], [], ["13"], LINDSAY),
  "half-diminished": row(["9", "11", "b13"], [], [], LINDSAY),
  "diminished-seventh": row(["9", "11", "b13", "7"], [], [], LINDSAY),
  "no-chord": row([], [], [], COMMON),
});
