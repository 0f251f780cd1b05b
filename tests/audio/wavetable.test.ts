import { describe, expect, it } from "vitest";
import type { DbSpl, Hertz } from "../../src/base/index.ts";
import { FULL_SCALE_DB_SPL } from "../../src/audio/level-calibration.ts";
import { periodLength, wavetableOf } from "../../src/audio/wavetable.ts";
import { rms } from "./support/fourier.ts";

const ceiling = 24000 as Hertz;
const partial = (hz: number, dbSpl: number) => ({ hz: hz as Hertz, dbSpl: dbSpl as DbSpl });

describe("a wavetable", () => {
  it("holds one period of a single partial at its calibrated level", () => {
    const { period } = wavetableOf([partial(440, FULL_SCALE_DB_SPL - 20)], 440 as Hertz, ceiling);
    expect(Math.max(...period)).toBeCloseTo(0.1, 4);
    expect(period[period.length - 1]).toBe(period[0]);
  });

  it("states the rms of its period", () => {
    const table = wavetableOf(
      [partial(200, 90), partial(400, 84), partial(1000, 70)],
      200 as Hertz,
      ceiling,
    );
    expect(rms(table.period.subarray(0, -1))).toBeCloseTo(table.rms, 6);
  });

  it("leaves out what the sampling rate cannot carry", () => {
    const all = wavetableOf([partial(5000, 80), partial(10000, 80)], 5000 as Hertz, 8000 as Hertz);
    const one = wavetableOf([partial(5000, 80)], 5000 as Hertz, 8000 as Hertz);
    expect(all.rms).toBe(one.rms);
  });

  it("gives the highest partials of low notes enough samples", () => {
    for (const hz of [30, 60, 110, 440, 1760]) {
      const size = periodLength(hz as Hertz);
      expect(Math.log2(size) % 1).toBe(0);
      expect(size / (12000 / hz)).toBeGreaterThan(20);
    }
  });

  it("refuses a partial that is no harmonic", () => {
    expect(() => wavetableOf([partial(450, 60)], 440 as Hertz, ceiling)).toThrow(
      "must be a harmonic of 440 Hz, got 450 Hz",
    );
  });
});
