import type { RoughnessMethod } from "./roughness-types.ts";

const LEVEL_EXPONENT = 0.1;
const FLUCTUATION_EXPONENT = 3.11;
const PLACE = 0.24;
const PER_HZ = 0.0207;
const AT_ZERO = 18.96;
const SLOW = 3.5;
const FAST = 5.75;

/**
 * Roughness after Vassilakis: a weak dependence on level, a strong one on how deeply two partials
 * beat. The sound's largest pressure counts as 1.
 */
export const VASSILAKIS: RoughnessMethod = Object.freeze<RoughnessMethod>({
  id: "vassilakis",
  label: "Vassilakis",
  source:
    "P. N. Vassilakis, Perceptual and physical properties of amplitude fluctuation, UCLA 2001",
  pair: (lowHz, lowAmp, highHz, highAmp) => {
    const product = lowAmp * highAmp;
    if (product === 0) return 0;
    const depth = (2 * Math.min(lowAmp, highAmp)) / (lowAmp + highAmp);
    const distance = (PLACE / (PER_HZ * lowHz + AT_ZERO)) * (highHz - lowHz);
    const curve = Math.exp(-SLOW * distance) - Math.exp(-FAST * distance);
    return product ** LEVEL_EXPONENT * 0.5 * depth ** FLUCTUATION_EXPONENT * curve;
  },
  divisor: ({ peak }) => peak ** (2 * LEVEL_EXPONENT) || 1,
});
