import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededChance } from "../../src/base/index.ts";
import type { Hertz } from "../../src/base/index.ts";
import { CEILING_DB_TP, TruePeakLimiter, limited } from "../../src/audio/limiter.ts";
import { truePeak } from "../../src/audio/true-peak.ts";
import { joined, peak, sine } from "./support/fourier.ts";

const rate = 48000 as Hertz;

/** Sines of chance pitch and level, some far beyond full scale, with sudden steps between. */
function wildSignal(seed: number): Float32Array {
  const chance = seededChance(seed);
  const pieces = Array.from({ length: 6 }, () =>
    sine(rate, 0.05 + 0.1 * chance(), 60 * 2 ** (7 * chance()), 4 * chance() ** 2, 6 * chance()),
  );
  return joined(...pieces);
}

/** Largest value of the signal rebuilt at 16 points a sample by a Hann-windowed sinc of 64 taps. */
function peakBySixteen(samples: Float32Array): number {
  let most = 0;
  for (let i = 0; i < samples.length; i++) {
    if (Math.abs(samples[i]!) < 0.5) continue;
    for (let part = -8; part <= 8; part++) {
      let sum = 0;
      for (let t = -32; t <= 32; t++) {
        const x = t - part / 16;
        const window = 0.5 + 0.5 * Math.cos((Math.PI * x) / 33);
        const sinc = x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
        sum += (samples[i + t] ?? 0) * sinc * window;
      }
      most = Math.max(most, Math.abs(sum));
    }
  }
  return most;
}

describe("the true-peak limiter", () => {
  it("lets no peak above −1 dBTP, whatever comes", () => {
    expect(CEILING_DB_TP).toBe(-1);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const left = wildSignal(seed);
        const right = wildSignal(seed + 1);
        const length = Math.min(left.length, right.length);
        const both = { left: left.slice(0, length), right: right.slice(0, length) };
        const safe = limited(both, rate);
        expect(truePeak([safe.left, safe.right])).toBeLessThanOrEqual(CEILING_DB_TP);
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it("holds under 16 × oversampling by another filter too", () => {
    for (const seed of [1, 2, 3, 4]) {
      const left = wildSignal(seed);
      const { left: safe } = limited({ left, right: left }, rate);
      expect(20 * Math.log10(peakBySixteen(safe))).toBeLessThanOrEqual(CEILING_DB_TP);
    }
  });

  it("leaves what is under the ceiling as it is, to the bit", () => {
    const quiet = sine(rate, 0.5, 440, 0.7);
    const { left, right } = limited({ left: quiet, right: quiet }, rate);
    expect(left).toEqual(quiet);
    expect(right).toEqual(quiet);
  });

  it("turns both sides down alike, so that nothing moves on the stage", () => {
    const loud = sine(rate, 0.3, 300, 2);
    const { left, right } = limited({ left: loud, right: loud.map((x) => x / 4) }, rate);
    for (let i = 0; i < loud.length; i += 13) expect(right[i]).toBeCloseTo(left[i]! / 4, 6);
  });

  it("does not care how the signal is cut into blocks", () => {
    const signal = wildSignal(3);
    const whole = signal.slice();
    const wholeRight = signal.slice();
    new TruePeakLimiter(rate).process(whole, wholeRight);
    const parts = signal.slice();
    const partsRight = signal.slice();
    const limiter = new TruePeakLimiter(rate);
    for (let from = 0, n = 1; from < parts.length; from += n, n = (n * 7 + 3) % 311)
      limiter.process(parts.subarray(from, from + n), partsRight.subarray(from, from + n));
    expect(parts).toEqual(whole);
  });

  it("delays by its latency and no more", () => {
    const limiter = new TruePeakLimiter(rate);
    const left = new Float32Array(500);
    left[0] = 0.5;
    limiter.process(left, new Float32Array(500));
    expect(left.indexOf(0.5)).toBe(limiter.latency);
  });

  it("recovers: after a loud moment a quiet sound comes back to its level", () => {
    const signal = joined(sine(rate, 0.1, 200, 3), sine(rate, 2, 200, 0.5));
    const { left } = limited({ left: signal, right: signal }, rate);
    expect(peak(left, left.length - 4800)).toBeCloseTo(0.5, 3);
  });
});
