import { describe, expect, it } from "vitest";
import {
  hearingThresholdIso226,
  hearingThresholdTerhardt,
} from "../../src/acoustics/hearing-threshold.ts";
import type { Hertz } from "../../src/base/index.ts";

describe("hearing threshold", () => {
  it("is lowest between 3 and 4 kHz by both sources", () => {
    for (const threshold of [hearingThresholdTerhardt, hearingThresholdIso226]) {
      expect(threshold(3150 as Hertz)).toBeLessThan(threshold(1000 as Hertz));
      expect(threshold(3150 as Hertz)).toBeLessThan(threshold(8000 as Hertz));
    }
  });

  it("agrees between the sources within 4.2 dB from 100 Hz to 5 kHz", () => {
    for (const hz of [100, 200, 500, 1000, 2000, 5000] as Hertz[])
      expect(Math.abs(hearingThresholdTerhardt(hz) - hearingThresholdIso226(hz))).toBeLessThan(4.2);
  });
});
