import type { Count, Hertz, Ratio } from "../base/index.ts";
import type { EarGrid } from "./ear-grid.ts";
import { lowerSharpness, lowerSideFactor, roexWeight } from "./roex-filter.ts";

const LOWEST_LEVEL_DB = -20;
const HIGHEST_LEVEL_DB = 130;
const STEPS_PER_DB = 1;
/** Weights below this, and all channels further up, are left out. */
const NEGLIGIBLE_WEIGHT = 1e-7;

/**
 * Lower sides of the ear's filters, ready made: for every grid place and every level around it, the
 * weights with which the place reaches itself and the channels above. Rows of all places and levels
 * lie one after the other.
 */
export interface SlopeRows {
  readonly levels: Count;
  readonly weights: Float32Array;
  /** Start of each row in the weights, by place times levels plus level step; one more at the end. */
  readonly starts: Int32Array;
}

/**
 * Level step of a level.
 * @param level - dB at the cochlea within one ERB
 * @returns row of that level, the end rows beyond -20 and 130 dB
 */
export function levelStep(level: Ratio): Count {
  const clipped = Math.min(HIGHEST_LEVEL_DB, Math.max(LOWEST_LEVEL_DB, level));
  return Math.round((clipped - LOWEST_LEVEL_DB) * STEPS_PER_DB);
}

/** Weights of one place at one level, from the place itself upwards. */
function slopeRow(grid: EarGrid, place: number, level: number): number[] {
  const factor = lowerSideFactor(level);
  const row: number[] = [];
  for (let channel = place; channel < grid.endChannel; channel += 1) {
    const centre = grid.hz[channel]!;
    const distance = 1 - grid.hz[place]! / centre;
    const weight = roexWeight(lowerSharpness(centre as Hertz, factor) * distance);
    if (weight < NEGLIGIBLE_WEIGHT) break;
    row.push(weight);
  }
  return row;
}

/**
 * Builds all rows of a grid.
 * @param grid - places
 * @returns rows, about a million weights
 * @source filter shapes: ISO 532-2:2017
 */
export function slopeRows(grid: EarGrid): SlopeRows {
  const levels = (HIGHEST_LEVEL_DB - LOWEST_LEVEL_DB) * STEPS_PER_DB + 1;
  const starts = new Int32Array(grid.size * levels + 1);
  const rows: number[] = [];
  for (let place = 0; place < grid.size; place += 1)
    for (let step = 0; step < levels; step += 1) {
      const row = slopeRow(grid, place, LOWEST_LEVEL_DB + step / STEPS_PER_DB);
      for (const weight of row) rows.push(weight);
      starts[place * levels + step + 1] = rows.length;
    }
  return { levels, weights: Float32Array.from(rows), starts };
}
