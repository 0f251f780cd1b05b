import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { erbHz, erbNumberToHz, hzToErbNumber } from "../../src/acoustics/erb.ts";
import type { Hertz } from "../../src/base/index.ts";

const audible = fc.double({ min: 20, max: 20000, noNaN: true });

describe("the ERB-number scale", () => {
  it("goes there and back", () => {
    fc.assert(
      fc.property(audible, (hz) => {
        expect(erbNumberToHz(hzToErbNumber(hz as Hertz)) / hz).toBeCloseTo(1, 9);
      }),
      { seed: 7 },
    );
  });

  it("counts one for each bandwidth", () => {
    for (const hz of [100, 1000, 5000]) {
      const step = erbHz(hz as Hertz) / 100;
      const counted = hzToErbNumber((hz + step) as Hertz) - hzToErbNumber(hz as Hertz);
      expect(counted).toBeCloseTo(0.01, 3);
    }
  });
});
