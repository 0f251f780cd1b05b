import type { Ratio } from "../base/index.ts";
import type { RoughnessMethod } from "./roughness-types.ts";

/** Where the curve of two partials stretches: 0.24 / (0.021 f + 19). */
const PLACE = 0.24;
const PER_HZ = 0.021;
const AT_ZERO = 19;
const SLOW = 3.5;
const FAST = 5.75;

/**
 * Dissonance curve of two partials with unit pressures.
 * @param lowHz - lower frequency
 * @param highHz - higher frequency
 * @returns roughness, at most 0.1808
 * @source W. A. Sethares 1993, JASA 94, 1218
 * @example setharesCurve(440, 460) // 0.1753
 */
export function setharesCurve(lowHz: Ratio, highHz: Ratio): Ratio {
  const distance = (PLACE / (PER_HZ * lowHz + AT_ZERO)) * (highHz - lowHz);
  return Math.exp(-SLOW * distance) - Math.exp(-FAST * distance);
}

/** Sethares with the smaller pressure of a pair; the sound's largest pressure counts as 1. */
export const SETHARES_MINIMUM: RoughnessMethod = Object.freeze<RoughnessMethod>({
  id: "sethares-minimum",
  label: "Sethares, smaller amplitude",
  source: "W. A. Sethares, Tuning, Timbre, Spectrum, Scale, 2nd ed. 2005",
  pair: (lowHz, lowAmp, highHz, highAmp) =>
    Math.min(lowAmp, highAmp) * setharesCurve(lowHz, highHz),
  divisor: ({ peak }) => peak || 1,
});

/** Sethares with the product of the pressures; the sound's largest pressure counts as 1. */
export const SETHARES_PRODUCT: RoughnessMethod = Object.freeze<RoughnessMethod>({
  id: "sethares-product",
  label: "Sethares, product of amplitudes",
  source: "W. A. Sethares 1993, JASA 94, 1218",
  pair: (lowHz, lowAmp, highHz, highAmp) => lowAmp * highAmp * setharesCurve(lowHz, highHz),
  divisor: ({ peak }) => peak ** 2 || 1,
});
