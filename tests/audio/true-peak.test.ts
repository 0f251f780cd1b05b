import { describe, expect, it } from "vitest";
import {
  LARGEST_OVERSHOOT,
  QUARTER_FILTERS,
  largest,
  truePeak,
} from "../../src/audio/true-peak.ts";
import { sine } from "./support/fourier.ts";

// Published signals: tests/standards/ebu-3341.test.ts.
describe("the true peak", () => {
  it("finds a peak between the samples", () => {
    // fs/4 at 45 degrees: every sample is 3 dB under the peak.
    const tone = sine(48000, 0.1, 12000, 0.5, Math.PI / 4);
    for (let i = 0; i < 480; i++) {
      tone[i] = (tone[i]! * i) / 480;
      tone[tone.length - 1 - i] = (tone[tone.length - 1 - i]! * i) / 480;
    }
    expect(20 * Math.log10(largest(tone, 0, tone.length))).toBeCloseTo(-9.03, 1);
    expect(truePeak([tone])).toBeCloseTo(-6.02, 1);
  });

  it("takes the louder channel, and silence for what it is", () => {
    const quiet = sine(48000, 0.1, 1000, 0.1);
    const loud = sine(48000, 0.1, 1000, 0.2);
    expect(truePeak([quiet, loud])).toBe(truePeak([loud, quiet]));
    expect(truePeak([new Float32Array(100)])).toBe(-Infinity);
  });

  it("rebuilds a slow signal exactly and bounds every overshoot", () => {
    for (const taps of QUARTER_FILTERS)
      expect(taps.reduce((sum, tap) => sum + tap, 0)).toBeCloseTo(1, 12);
    expect(LARGEST_OVERSHOOT).toBeGreaterThan(1);
    expect(LARGEST_OVERSHOOT).toBeLessThan(3);
  });
});
