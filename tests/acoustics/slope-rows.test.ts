import { describe, expect, it } from "vitest";
import { earGrid } from "../../src/acoustics/ear-grid.ts";
import { lowerSharpness, lowerSideFactor, roexWeight } from "../../src/acoustics/roex-filter.ts";
import { levelStep, slopeRows } from "../../src/acoustics/slope-rows.ts";
import type { Hertz } from "../../src/base/index.ts";

const grid = earGrid();
const rows = slopeRows(grid);
const rowOf = (place: number, level: number): Float32Array => {
  const row = place * rows.levels + levelStep(level);
  return rows.weights.subarray(rows.starts[row]!, rows.starts[row + 1]!);
};

describe("ready-made slopes", () => {
  it("pass the place itself wholly and fall upwards", () => {
    const row = rowOf(60, 70);
    expect(row[0]).toBe(1);
    row.slice(1).forEach((weight, index) => expect(weight).toBeLessThan(row[index]!));
  });

  it("hold the filters' weights", () => {
    const [from, to, level] = [50, 57, 80];
    const sharpness = lowerSharpness(grid.hz[to]! as Hertz, lowerSideFactor(level));
    const exact = roexWeight(sharpness * (1 - grid.hz[from]! / grid.hz[to]!));
    expect(rowOf(from, level)[to - from]! / exact).toBeCloseTo(1, 6);
  });

  it("reach further at high levels", () => {
    expect(rowOf(60, 100).length).toBeGreaterThan(rowOf(60, 50).length);
  });

  it("hold at the ends of the levels", () => {
    expect(levelStep(-500)).toBe(0);
    expect(levelStep(500)).toBe(rows.levels - 1);
    expect(levelStep(-Infinity)).toBe(0);
  });
});
