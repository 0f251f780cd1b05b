import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { kWeighting } from "../../src/audio/k-weighting.ts";

// Published coefficients and gains: tests/standards/bs1770-k-weighting.test.ts.
describe("K-weighting sections", () => {
  it("are stable filters at every usual sampling rate", () => {
    for (const rate of [32000, 44100, 48000, 88200, 96000, 192000])
      for (const { a1, a2 } of kWeighting(rate as Hertz)) {
        expect(Math.abs(a2)).toBeLessThan(1);
        expect(Math.abs(a1)).toBeLessThan(1 + a2);
      }
  });
});
