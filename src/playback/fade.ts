import type { Ratio, Seconds } from "../base/index.ts";

/** How long one sound takes to give way to another, or to silence. */
export const FADE_SECONDS: Seconds = 0.02 as Seconds;
const POINTS = 33;

/**
 * Gain over a fade to silence: half a period of a cosine, so that neither end has a corner.
 * @returns POINTS gains from 1 to 0, evenly spaced in time
 * @source raised cosine; common practice, no single source
 */
export function fadeOutCurve(): readonly Ratio[] {
  return Array.from(
    { length: POINTS },
    (_, i) => 0.5 + 0.5 * Math.cos((Math.PI * i) / (POINTS - 1)),
  );
}

/**
 * Gain over a fade from silence, the fade to silence turned round: the two add up to 1.
 * @returns POINTS gains from 0 to 1
 */
export function fadeInCurve(): readonly Ratio[] {
  return [...fadeOutCurve()].reverse();
}
