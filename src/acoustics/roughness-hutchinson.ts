import type { Hertz, Ratio } from "../base/index.ts";
import { criticalBandwidthHutchinson } from "./critical-bandwidth-hutchinson.ts";
import type { RoughnessMethod } from "./roughness-types.ts";

const ROUGHEST_BANDWIDTHS = 0.25;
const SMOOTH_FROM_BANDWIDTHS = 1.2;
/** Room for the mean of a pair lying above its lower frequency. */
const REACH_MARGIN = 1.1;

/**
 * Dissonance of two partials by their distance in critical bandwidths.
 * @param bandwidths - distance over critical bandwidth, 0 or more
 * @returns 1 at a quarter of a bandwidth, 0 beyond 1.2
 * @source W. Hutchinson and L. Knopoff 1978 in the form of E. Bigand, R. Parncutt and F. Lerdahl 1996
 * @example hutchinsonCurve(0.5) // 0.5413
 */
export function hutchinsonCurve(bandwidths: Ratio): Ratio {
  if (bandwidths > SMOOTH_FROM_BANDWIDTHS) return 0;
  const place = bandwidths / ROUGHEST_BANDWIDTHS;
  return (place * Math.exp(1 - place)) ** 2;
}

/** Roughness after Hutchinson and Knopoff, relative to the power of the whole sound. */
export const HUTCHINSON_KNOPOFF: RoughnessMethod = Object.freeze<RoughnessMethod>({
  id: "hutchinson-knopoff",
  label: "Hutchinson and Knopoff",
  source: "W. Hutchinson and L. Knopoff 1978, Interface 7, 1; form of Bigand et al. 1996",
  pair: (lowHz, lowAmp, highHz, highAmp) => {
    const bandwidth = criticalBandwidthHutchinson(((lowHz + highHz) / 2) as Hertz);
    return lowAmp * highAmp * hutchinsonCurve((highHz - lowHz) / bandwidth);
  },
  reach: (lowHz) => {
    const first = lowHz + SMOOTH_FROM_BANDWIDTHS * criticalBandwidthHutchinson(lowHz as Hertz);
    const bandwidth = criticalBandwidthHutchinson(((lowHz + first) / 2) as Hertz);
    return lowHz + REACH_MARGIN * SMOOTH_FROM_BANDWIDTHS * bandwidth;
  },
  divisor: ({ power }) => power || 1,
});
