import { describe, expect, it } from "vitest";
import { HUTCHINSON_KNOPOFF, hutchinsonCurve } from "../../src/acoustics/roughness-hutchinson.ts";

describe("Hutchinson and Knopoff's roughness", () => {
  it("is greatest a quarter of a critical bandwidth apart", () => {
    expect(hutchinsonCurve(0.25)).toBe(1);
    expect(hutchinsonCurve(0.2)).toBeLessThan(1);
    expect(hutchinsonCurve(0.3)).toBeLessThan(1);
    expect(hutchinsonCurve(0)).toBe(0);
  });

  it("reaches no further than it says", () => {
    for (const hz of [50, 200, 1000, 8000]) {
      const end = HUTCHINSON_KNOPOFF.reach!(hz);
      expect(HUTCHINSON_KNOPOFF.pair(hz, 1, end, 1)).toBe(0);
      expect(HUTCHINSON_KNOPOFF.pair(hz, 1, hz + (end - hz) * 0.8, 1)).toBeGreaterThan(0);
    }
  });
});
