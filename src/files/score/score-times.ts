import type { Count } from "../../base/index.ts";
import type { Divisions } from "../../theory/index.ts";
import type { ScoreBar, ScoreModel } from "./score-model.ts";

/** A bar with its place in the score. */
export interface PlacedBar {
  readonly bar: ScoreBar;
  /** 0 for a pickup, else from 1. */
  readonly number: Count;
  readonly start: Divisions;
  readonly end: Divisions;
}

/**
 * Bars with their numbers and times.
 * @param score - the score
 * @returns one entry a bar, in order
 */
export function placedBars(score: Pick<ScoreModel, "bars">): readonly PlacedBar[] {
  let start = 0;
  const first = score.bars[0]?.isPickup ? 0 : 1;
  return score.bars.map((bar, index) => {
    const placed = { bar, number: first + index, start, end: start + bar.length };
    start = placed.end;
    return placed as PlacedBar;
  });
}

/**
 * Length of a bar that its metre fills.
 * @param bar - the bar's metre
 * @param division - parts of a quarter note
 * @returns divisions
 * @example fullLength({ metre: { beats: 3, beatType: 4 } }, 2) // 6
 */
export function fullLength({ metre }: Pick<ScoreBar, "metre">, division: Count): Divisions {
  return ((metre.beats * 4 * division) / metre.beatType) as Divisions;
}

/**
 * The last entry that begins at a time or before it.
 * @param entries - in order of onset
 * @param time - when
 * @returns the entry that holds then; undefined before the first
 */
export function holdingAt<T extends { readonly onset: Divisions }>(
  entries: readonly T[],
  time: Divisions,
): T | undefined {
  return entries.filter(({ onset }) => onset <= time).at(-1);
}
