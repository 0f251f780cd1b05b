import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SlidingLeast } from "../../src/audio/sliding-least.ts";

describe("the least of a sliding window", () => {
  it("is what looking at every window gives", () => {
    const values = fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 60 });
    fc.assert(
      fc.property(values, fc.integer({ min: 1, max: 9 }), (list, window) => {
        const least = new SlidingLeast(window);
        list.forEach((value, i) => {
          const seen = list.slice(Math.max(0, i - window + 1), i + 1);
          expect(least.push(value)).toBe(Math.min(...seen));
        });
      }),
      { seed: 7 },
    );
  });
});
