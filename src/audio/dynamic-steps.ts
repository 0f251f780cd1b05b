import type { Count, Quantity } from "../base/index.ts";
import { dynamics } from "../band/index.ts";
import type { Dynamic } from "../band/index.ts";

/** Place on the row of dynamics: 0 is ppp, 7 is fff; fractions lie between two marks. */
export type DynamicPosition = Quantity<"dynamic steps above ppp">;

/** The loudest place on the row. */
export const LOUDEST_STEP: Count = dynamics.length - 1;

/**
 * Place of a written dynamic on the row.
 * @param dynamic - the mark
 * @returns 0 (ppp) to 7 (fff)
 */
export function positionOf(dynamic: Dynamic): DynamicPosition {
  return dynamics.indexOf(dynamic) as DynamicPosition;
}

/**
 * The written dynamic at a whole place on the row.
 * @param step - 0 to 7; anything beyond is taken as the nearest end
 * @returns the mark
 */
export function dynamicAt(step: Count): Dynamic {
  return dynamics[Math.min(LOUDEST_STEP, Math.max(0, step))]!;
}
