import { describe, expect, it } from "vitest";
import { fastLoudness } from "../../src/acoustics/fast-loudness.ts";
import { specificLoudness } from "../../src/acoustics/iso532-2-specific-loudness.ts";
import { grid } from "./support/workshop.ts";

describe("loudness read from the grid", () => {
  const loudnessOf = fastLoudness(grid);

  it("is the standard's specific loudness times the width of each place", () => {
    for (const level of [0, 2, 20, 60, 105]) {
      const power = 10 ** (level / 10);
      const expected = grid.growth.reduce(
        (sum, growth, place) => sum + 1.5 * specificLoudness(power, growth) * grid.widthCam[place]!,
        0,
      );
      expect(loudnessOf(new Float64Array(grid.size).fill(power)) / expected).toBeCloseTo(1, 9);
    }
  });

  it("of no excitation is nothing, also where rounding left less", () => {
    expect(loudnessOf(new Float64Array(grid.size))).toBe(0);
    expect(loudnessOf(new Float64Array(grid.size).fill(-1e-9))).toBe(0);
  });
});
