import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  barkTraunmuellerToHz,
  hzToBarkTraunmueller,
} from "../../src/acoustics/bark-traunmueller.ts";
import type { Hertz } from "../../src/base/index.ts";

describe("critical-band rate after Traunmüller", () => {
  it("goes there and back at both ends and between", () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 15500, noNaN: true }), (hz) => {
        expect(barkTraunmuellerToHz(hzToBarkTraunmueller(hz as Hertz)) / hz).toBeCloseTo(1, 9);
      }),
      { seed: 7 },
    );
  });

  it("has no jump where its corrections begin", () => {
    for (const hz of [204, 6500]) {
      const below = hzToBarkTraunmueller((hz - 0.5) as Hertz);
      const above = hzToBarkTraunmueller((hz + 0.5) as Hertz);
      expect(above - below).toBeGreaterThan(0);
      expect(above - below).toBeLessThan(0.02);
    }
  });
});
