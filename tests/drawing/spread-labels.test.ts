import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spreadLabels } from "../../src/drawing/spread-labels.ts";

const at = (y: number, height = 10) => ({ y, height });

describe("labels beside notes", () => {
  it("stay where they want to be when there is room", () => {
    expect(spreadLabels([at(10), at(40), at(90)], 2)).toEqual([10, 40, 90]);
  });

  it("part evenly around their common middle", () => {
    expect(spreadLabels([at(50), at(50)], 2)).toEqual([44, 56]);
    expect(spreadLabels([at(48), at(50), at(52)], 0)).toEqual([40, 50, 60]);
  });

  it("count their own heights", () => {
    expect(spreadLabels([at(50, 30), at(50, 10)], 0)).toEqual([40, 60]);
  });

  it("do not rise above the top", () => {
    expect(spreadLabels([at(12), at(12)], 0, 10)).toEqual([15, 25]);
  });

  it("have nothing to do without notes", () => {
    expect(spreadLabels([], 2)).toEqual([]);
  });

  it("never lie on each other, keep their order and the mean of their wishes", () => {
    const wishes = fc
      .array(fc.record({ y: fc.integer({ min: 0, max: 300 }), height: fc.constant(16) }), {
        minLength: 1,
        maxLength: 13,
      })
      .map((list) => list.sort((a, b) => a.y - b.y));
    fc.assert(
      fc.property(wishes, (list) => {
        const middles = spreadLabels(list, 2);
        middles.slice(1).forEach((y, index) => {
          expect(y - middles[index]!).toBeGreaterThanOrEqual(18 - 1e-9);
        });
        const mean = (values: readonly number[]) =>
          values.reduce((sum, value) => sum + value, 0) / values.length;
        expect(mean(middles)).toBeCloseTo(mean(list.map((wish) => wish.y)), 6);
      }),
      { seed: 7 },
    );
  });
});
