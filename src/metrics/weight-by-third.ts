import type { Ratio } from "../base/index.ts";
import { balanceUnits, type Dynamic } from "../band/index.ts";
import { stackOf, type Placement, type Voicing } from "../voicing/index.ts";
import { spanOf } from "./stack-gaps.ts";

/** Balance units in the lower, middle and upper third of the span. */
export interface WeightByThird {
  readonly low: Ratio;
  readonly middle: Ratio;
  readonly high: Ratio;
  readonly total: Ratio;
}

/** Units are summed in whole thousandths, so that the order of players changes nothing. */
const thousandths = (placement: Placement, dynamic: Dynamic): number =>
  Math.round(balanceUnits(placement.player, dynamic) * 1000);

/** Which third a pitch lies in; the borders belong to the middle. */
function thirdOf(aboveBottom: number, span: number): "low" | "middle" | "high" {
  if (3 * aboveBottom < span) return "low";
  return 3 * aboveBottom > 2 * span ? "high" : "middle";
}

/**
 * Weight in balance units and where it sits.
 * @param voicing - who sounds what
 * @param dynamic - dynamic on paper
 * @returns units in each third of the span and in all; one pitch alone counts as the middle
 * @source balance units: N. Rimsky-Korsakov, Principles of Orchestration (1922); thirds: definition
 *   of this project
 */
export function weightByThird(voicing: Voicing, dynamic: Dynamic): WeightByThird {
  const sums = { low: 0, middle: 0, high: 0 };
  const bottom = stackOf(voicing)[0] ?? 0;
  const span = spanOf(voicing);
  for (const placement of voicing.placements)
    sums[thirdOf(placement.sounding - bottom, span)] += thousandths(placement, dynamic);
  return {
    low: sums.low / 1000,
    middle: sums.middle / 1000,
    high: sums.high / 1000,
    total: (sums.low + sums.middle + sums.high) / 1000,
  };
}
