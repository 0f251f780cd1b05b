import type { Count } from "../base/index.ts";
import type { Metre } from "../theory/index.ts";

/** What the strength of a place in the bar depends on. */
export interface Grid {
  readonly metre: Metre;
  /** Parts of a quarter note. */
  readonly division: Count;
}

/**
 * A beat as it is grouped on paper: a quarter in 4/4, a dotted quarter in 6/8, a half in 2/2.
 * @param grid - metre and division
 * @returns divisions
 */
export function groupLength({ metre, division }: Grid): Count {
  const note = (4 * division) / metre.beatType;
  const isCompound = metre.beatType >= 8 && metre.beats > 3 && metre.beats % 3 === 0;
  return isCompound ? 3 * note : note;
}

/**
 * How strong a place of the bar is: what a note value may hide.
 * @param at - divisions from the start of the full bar
 * @param grid - metre and division
 * @returns 5 a bar line, 4 the middle of a bar of four, 3 a beat, 2 its half or third, 1 the next
 *   smaller, 0 anything finer
 * @source common practice, no single source
 */
export function boundaryStrength(at: Count, grid: Grid): Count {
  const { metre, division } = grid;
  const group = groupLength(grid);
  const bar = (metre.beats * 4 * division) / metre.beatType;
  if (at % bar === 0) return 5;
  const groups = bar / group;
  if (groups % 2 === 0 && groups > 2 && at % bar === bar / 2) return 4;
  if (groups === 2 && group > division && at % bar === bar / 2) return 4;
  if (at % group === 0) return 3;
  const isCompound = group > (4 * division) / metre.beatType;
  const half = isCompound ? group / 3 : group / 2;
  if (at % half === 0) return 2;
  return at % (half / 2) === 0 ? 1 : 0;
}
