import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { powerSteps } from "../../src/acoustics/level-steps.ts";
import { levelStep } from "../../src/acoustics/slope-rows.ts";

describe("level steps from the bits of a power", () => {
  const stepOf = powerSteps();

  it("are those of the logarithm, up to the border between two steps", () => {
    fc.assert(
      fc.property(fc.double({ min: -25, max: 135, noNaN: true }), (level) => {
        const found = stepOf(10 ** (level / 10));
        expect(found).toBeGreaterThanOrEqual(levelStep(level - 0.05));
        expect(found).toBeLessThanOrEqual(levelStep(level + 0.05));
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  it("of no power is the lowest", () => expect(stepOf(0)).toBe(0));
});
