import { describe, expect, it } from "vitest";
import {
  channelGrowth,
  compressed,
  specificLoudness,
} from "../../src/acoustics/iso532-2-specific-loudness.ts";
import type { Hertz } from "../../src/base/index.ts";

describe("specific loudness", () => {
  // ISO 532-2:2017, constants from 500 Hz up.
  it("uses the standard's constants", () => {
    const growth = channelGrowth(1000 as Hertz);
    expect(growth.exponent).toBe(0.2);
    expect(growth.constant).toBe(4.131);
    expect(growth.gain).toBe(1);
    expect(10 * Math.log10(growth.threshold)).toBeCloseTo(3.15, 9);
    expect(10 * Math.log10(channelGrowth(63 as Hertz).threshold)).toBeCloseTo(23.45, 9);
  });

  it("grows with excitation without a jump at the threshold and at high levels", () => {
    for (const hz of [60, 200, 1000] as Hertz[]) {
      const growth = channelGrowth(hz);
      const steps = Array.from({ length: 130 }, (_none, index) => 10 ** (index / 10 - 0.5));
      const values = steps.map((excitation) => specificLoudness(excitation, growth));
      values.slice(1).forEach((value, index) => {
        expect(value).toBeGreaterThan(values[index]!);
        expect(value).toBeLessThan(3 * values[index]! + 1e-3);
      });
    }
  });

  it("meets the high-level form within 1 %", () => {
    const growth = channelGrowth(1000 as Hertz);
    expect(compressed(1.0001e10, growth) / compressed(0.9999e10, growth)).toBeCloseTo(1, 2);
  });

  it("is nothing without excitation", () => {
    expect(specificLoudness(0, channelGrowth(1000 as Hertz))).toBe(0);
  });
});
