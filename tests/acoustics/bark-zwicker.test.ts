import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { barkZwickerToHz, hzToBarkZwicker } from "../../src/acoustics/bark-zwicker.ts";
import type { Bark, Hertz } from "../../src/base/index.ts";

describe("critical-band rate after Zwicker and Terhardt", () => {
  it("goes there and back", () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 15500, noNaN: true }), (hz) => {
        expect(barkZwickerToHz(hzToBarkZwicker(hz as Hertz)) / hz).toBeCloseTo(1, 9);
      }),
      { seed: 7 },
    );
  });

  it("puts 1 kHz near 8.5 Bark, as the critical bands were numbered", () => {
    expect(Math.abs(hzToBarkZwicker(1000 as Hertz) - 8.5)).toBeLessThan(0.1);
  });

  it("knows no place beyond the scale", () => {
    expect(() => barkZwickerToHz(26 as Bark)).toThrow(/0 to 25, got 26/);
    expect(() => barkZwickerToHz(-1 as Bark)).toThrow(RangeError);
  });
});
