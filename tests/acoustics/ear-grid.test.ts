import { describe, expect, it } from "vitest";
import { earGrid } from "../../src/acoustics/ear-grid.ts";
import type { Hertz } from "../../src/base/index.ts";

describe("the ear sampled by semitones", () => {
  const grid = earGrid();

  it("has a place for every tempered pitch from 20 Hz to 20 kHz", () => {
    expect(grid.hz[0]).toBeLessThan(21);
    expect(grid.hz[grid.size - 1]).toBeGreaterThan(20000);
    expect(grid.hz.includes(440)).toBe(true);
    grid.hz
      .slice(1)
      .forEach((hz, index) => expect(hz / grid.hz[index]!).toBeCloseTo(2 ** (1 / 12)));
  });

  it("adds up loudness over exactly the standard's range of 37.2 Cam", () => {
    expect(grid.widthCam.reduce((sum, width) => sum + width, 0)).toBeCloseTo(37.2, 9);
    expect(grid.widthCam[grid.firstChannel]).toBeGreaterThan(0);
    expect(grid.widthCam[grid.firstChannel - 1]).toBe(0);
    expect(grid.widthCam[grid.endChannel - 1]).toBeGreaterThan(0);
    expect(grid.widthCam[grid.endChannel] ?? 0).toBe(0);
  });

  it("follows the tuning", () => {
    expect(earGrid(442 as Hertz).hz.includes(442)).toBe(true);
  });
});
