import { describe, expect, it } from "vitest";
import { curveAt, densityOf, textureAt, textureCost } from "../../src/phrase/curves.ts";
import { at, levelCurves } from "./support/phrases.ts";

describe("curves", () => {
  const curve = [
    { at: at(0), value: 10 },
    { at: at(4), value: 30 },
    { at: at(4), value: 5 },
    { at: at(8), value: 5 },
  ];

  it("run straight between points and stay level outside them", () => {
    expect(curveAt(curve, at(1))).toBe(15);
    expect(curveAt(curve, at(100))).toBe(5);
    expect(curveAt([{ at: at(4), value: 7 }], at(0))).toBe(7);
  });

  it("step where two points share a time: the later one holds", () =>
    expect(curveAt(curve, at(4))).toBe(5));

  it("need a point", () => expect(() => curveAt([], at(0))).toThrow(RangeError));

  it("are asked for all three at once", () =>
    expect(textureAt(levelCurves(20, 3, 8), at(5))).toEqual({ span: 20, density: 3, weight: 8 }));
});

describe("density of a stack, distinct notes an octave", () => {
  // Mean gaps of published voicings (W1 5.33, W11 6.5, W29 2.67 semitones) are 12 over the density.
  it.each([
    [4, 16, 5.33],
    [5, 26, 6.5],
    [4, 8, 2.67],
  ])("of %i notes over %i semitones has a mean gap of %f", (notes, span, gap) =>
    expect(12 / densityOf(notes, span)).toBeCloseTo(gap, 2),
  );

  it("is 0 for a single note", () => expect(densityOf(1, 0)).toBe(0));
});

describe("distance from the curves", () => {
  const asked = { span: 24, density: 2, weight: 8 };

  it("is nothing for what was asked", () => expect(textureCost(asked, 24, 5, 8)).toBe(0));

  it("grows with every unit, and is a whole number", () => {
    expect(textureCost(asked, 25, 5, 8)).toBeGreaterThan(0);
    expect(textureCost(asked, 24, 6, 8)).toBe(3);
    expect(textureCost(asked, 24, 5, 7)).toBe(3);
    expect(Number.isInteger(textureCost({ span: 20.3, density: 2.7, weight: 6.6 }, 24, 6, 8))).toBe(
      true,
    );
  });

  it("does not charge a wrong span twice: density is compared at the span that sounds", () =>
    expect(textureCost(asked, 30, 6, 8)).toBe(6));
});
