import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indicesByBound } from "../../src/voicing/bound-order.ts";

describe("indices by their bounds", () => {
  it("are the same as sorting plainly, negative bounds included", () => {
    const bounds = fc.array(fc.integer({ min: -(2 ** 30), max: 2 ** 30 }), { maxLength: 50 });
    fc.assert(
      fc.property(bounds, (values) => {
        const plain = values
          .map((value, at) => ({ value, at }))
          .sort((a, b) => a.value - b.value || a.at - b.at)
          .map(({ at }) => at);
        expect([...indicesByBound(values.length, (at) => values[at]!)]).toEqual(plain);
      }),
      { seed: 7 },
    );
  });
});
