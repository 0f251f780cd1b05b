import type { AboveRoot, ChordFamily } from "./chord-types.ts";

/** Groups of tones that identify a chord; of each group one tone must sound. */
export interface RequiredGroupsRow {
  /** Semitones above the root, in the order they are asked for. */
  readonly groups: readonly (readonly AboveRoot[])[];
  /**
   * Order of printed extras behind the groups: one step after the other, within a step as printed.
   * What no step names follows as printed.
   */
  readonly printedOrder: readonly (readonly AboveRoot[])[];
  readonly source: string;
}

const GUIDE_TONES =
  "third and seventh right above the root (Jazz arranging tutorial); guide tones, common practice";
const COMMON = "common practice, no single source";
const row = (
  groups: readonly (readonly AboveRoot[])[],
  printedOrder: readonly (readonly AboveRoot[])[],
  source: string,
): RequiredGroupsRow => Object.freeze({ groups, printedOrder, source });

const ALTERATIONS_THEN_13_9 = [[1, 3, 6, 8], [9], [2]];

/**
 * Required groups by chord family.
 * Source: each row names its own; the order is the project's judgement.
 */
export const REQUIRED_GROUPS: Readonly<Record<ChordFamily, RequiredGroupsRow>> = Object.freeze({
  major: row([[4]], [], COMMON),
  minor: row([[3]], [], COMMON),
  diminished: row([[3], [6]], [], COMMON),
  augmented: row([[4], [8]], [], COMMON),
  "suspended-fourth": row([[5]], [], COMMON),
  "suspended-second": row([[2]], [], COMMON),
  power: row([[7]], [], COMMON),
  sixth: row([[4], [9]], [[2]], GUIDE_TONES),
  "minor-sixth": row([[3], [9]], [[2]], GUIDE_TONES),
  "major-seventh": row([[4], [11]], [[6], [8], [9], [2]], GUIDE_TONES),
  "minor-major-seventh": row([[3], [11]], [[6], [8], [9], [2]], GUIDE_TONES),
  dominant: row([[4], [10]], ALTERATIONS_THEN_13_9, GUIDE_TONES),
  "altered-dominant": row([[4], [10], [1, 3], [6, 8]], [], GUIDE_TONES),
  "dominant-suspended": row([[5], [10]], [[2], [9], [1]], GUIDE_TONES),
  "minor-seventh": row([[3], [10]], [[2], [5], [9]], GUIDE_TONES),
  "half-diminished": row([[3], [10], [6]], [], GUIDE_TONES),
  "diminished-seventh": row([[3], [6], [9]], [], GUIDE_TONES),
  "no-chord": row([], [], "no chord, no required tone"),
});
