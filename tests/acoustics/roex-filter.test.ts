import { describe, expect, it } from "vitest";
import {
  lowerSharpness,
  lowerSideFactor,
  roexWeight,
  upperSharpness,
} from "../../src/acoustics/roex-filter.ts";
import type { Hertz } from "../../src/base/index.ts";

const KILOHERTZ = 1000 as Hertz;

describe("the ear's filter", () => {
  it("passes its centre wholly and less and less away from it", () => {
    expect(roexWeight(0)).toBe(1);
    expect(roexWeight(1)).toBeGreaterThan(roexWeight(2));
  });

  // ISO 532-2:2017: 30.2 at 1 kHz and 51 dB, both sides.
  it("is symmetric at 51 dB, with a sharpness of 30.2 at 1 kHz", () => {
    expect(upperSharpness(KILOHERTZ)).toBeCloseTo(30.2, 1);
    expect(lowerSharpness(KILOHERTZ, lowerSideFactor(51))).toBe(upperSharpness(KILOHERTZ));
  });

  it("grows flatter below with level, and never quite flat", () => {
    expect(lowerSharpness(KILOHERTZ, lowerSideFactor(80))).toBeCloseTo(30.2 - 0.35 * 29, 1);
    expect(lowerSharpness(KILOHERTZ, lowerSideFactor(200))).toBe(0.1);
  });
});
