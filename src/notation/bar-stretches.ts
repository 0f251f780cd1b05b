import type { Count } from "../base/index.ts";
import type { Stretch } from "./bar-shape-types.ts";

/**
 * Fills a bar: what sounds, and rests between.
 * @param sounding - in order, none overlapping, from the start of the bar
 * @param length - of the bar
 * @returns stretches without gaps
 */
export function stretchesOf(
  sounding: readonly { readonly from: Count; readonly to: Count }[],
  length: Count,
): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let at = 0;
  const fillTo = (to: Count): void => {
    if (to > at) stretches.push({ from: at, to, isRest: true });
  };
  for (const { from, to } of sounding) {
    fillTo(from);
    stretches.push({ from, to, isRest: false });
    at = to;
  }
  fillTo(length);
  return stretches;
}
