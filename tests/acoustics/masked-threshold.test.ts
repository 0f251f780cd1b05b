import { describe, expect, it } from "vitest";
import { detectionRatio, maskedThreshold } from "../../src/acoustics/masked-threshold.ts";
import type { Hertz } from "../../src/base/index.ts";

describe("the masked threshold", () => {
  it("asks for more signal towards the bottom, and no more below 50 Hz", () => {
    const ratios = [50, 100, 200, 500, 999].map((hz) => detectionRatio(hz as Hertz));
    ratios.slice(1).forEach((ratio, index) => expect(ratio).toBeLessThan(ratios[index]!));
    expect(detectionRatio(20 as Hertz)).toBe(detectionRatio(50 as Hertz));
  });

  it("has no jump at 1 kHz", () => {
    expect(Math.abs(detectionRatio(999.9 as Hertz) - detectionRatio(1000 as Hertz))).toBeLessThan(
      0.01,
    );
  });

  it("is the threshold in quiet where nothing else sounds", () => {
    expect(maskedThreshold(1000 as Hertz, 0, 2)).toBe(2);
    expect(maskedThreshold(1000 as Hertz, 100, 2)).toBeCloseTo(2 + 100 * 10 ** -0.3, 9);
  });
});
