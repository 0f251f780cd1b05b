import type { Sone } from "../base/index.ts";
import { CHANNEL_STEP_CAM } from "./iso532-2-excitation.ts";

const REACH_CHANNELS = 180;
const NARROWNESS_PER_CHANNEL = 0.08;
const INHIBITION_EXPONENT = 1.5978;

const WEIGHTS = Float64Array.from({ length: REACH_CHANNELS + 1 }, (_, distance) =>
  Math.exp(-((NARROWNESS_PER_CHANNEL * distance) ** 2)),
);

/** Specific loudness smeared over neighbouring channels, as far as one ear inhibits the other. */
function smeared(specific: Float64Array): Float64Array {
  return specific.map((_, centre) => {
    const from = Math.max(0, centre - REACH_CHANNELS);
    const to = Math.min(specific.length - 1, centre + REACH_CHANNELS);
    let sum = 0;
    for (let index = from; index <= to; index += 1)
      sum += specific[index]! * WEIGHTS[Math.abs(index - centre)]!;
    return sum;
  });
}

/** Divisor on one ear: 1 when the other is silent, 4/3 when both are equal. */
function inhibition(own: number, other: number): number {
  if (own === 0) return 2;
  return 2 / (1 + 1 / Math.cosh(other / own) ** INHIBITION_EXPONENT);
}

/**
 * Loudness from the specific loudness of both ears, each inhibiting the other. Equal ears give 1.5
 * times one ear alone.
 * @param left - sone per Cam in 372 channels
 * @param right - the same for the other ear
 * @returns loudness in sone
 * @throws RangeError when the ears differ in channels
 * @source ISO 532-2:2017; B. C. J. Moore and B. R. Glasberg 2007, Hearing Research 228, 210
 */
export function binauralLoudness(left: Float64Array, right: Float64Array): Sone {
  if (left.length !== right.length)
    throw new RangeError(`ears must have equal channels, got ${left.length} and ${right.length}`);
  const leftSmeared = smeared(left);
  const rightSmeared = smeared(right);
  let sum = 0;
  for (let index = 0; index < left.length; index += 1) {
    const ownLeft = leftSmeared[index]!;
    const ownRight = rightSmeared[index]!;
    sum += left[index]! / inhibition(ownLeft, ownRight);
    sum += right[index]! / inhibition(ownRight, ownLeft);
  }
  return (sum * CHANNEL_STEP_CAM) as Sone;
}
