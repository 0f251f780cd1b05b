import type { Hertz } from "../base/index.ts";

/** One second-order section: y = b0·x + b1·x₁ + b2·x₂ − a1·y₁ − a2·y₂. */
export interface Biquad {
  readonly b0: number;
  readonly b1: number;
  readonly b2: number;
  readonly a1: number;
  readonly a2: number;
}

/** Analogue prototypes that give the published coefficients at 48 kHz. */
const SHELF = Object.freeze({
  hz: 1681.974450955533,
  gainDb: 3.999843853973347,
  q: 0.7071752369554196,
  middle: 0.4996667741545416,
});
const HIGH_PASS = Object.freeze({ hz: 38.13547087602444, q: 0.5003270373238773 });

/**
 * The two sections of the K-weighting filter at any sampling rate.
 * @param sampleRate - Hz
 * @returns the shelf of the head, then the high-pass
 * @source ITU-R BS.1770-5, annex 1, tables 1 and 2 (coefficients at 48 kHz); prototypes by bilinear
 * transform with K = tan(π·f/fs)
 */
export function kWeighting(sampleRate: Hertz): readonly [Biquad, Biquad] {
  return [shelf(sampleRate), highPass(sampleRate)];
}

function shelf(sampleRate: Hertz): Biquad {
  const k = Math.tan((Math.PI * SHELF.hz) / sampleRate);
  const high = 10 ** (SHELF.gainDb / 20);
  const middle = high ** SHELF.middle;
  const a0 = 1 + k / SHELF.q + k * k;
  return {
    b0: (high + (middle * k) / SHELF.q + k * k) / a0,
    b1: (2 * (k * k - high)) / a0,
    b2: (high - (middle * k) / SHELF.q + k * k) / a0,
    a1: (2 * (k * k - 1)) / a0,
    a2: (1 - k / SHELF.q + k * k) / a0,
  };
}

function highPass(sampleRate: Hertz): Biquad {
  const k = Math.tan((Math.PI * HIGH_PASS.hz) / sampleRate);
  const a0 = 1 + k / HIGH_PASS.q + k * k;
  return {
    b0: 1,
    b1: -2,
    b2: 1,
    a1: (2 * (k * k - 1)) / a0,
    a2: (1 - k / HIGH_PASS.q + k * k) / a0,
  };
}
