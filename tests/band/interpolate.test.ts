import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { interpolate } from "../../src/band/interpolate.ts";

describe("reading between rows", () => {
  const places = [0, 1, 3];
  const values = [0, 10, -10];

  it("gives the rows themselves and straight lines between them", () => {
    expect([0, 0.5, 1, 2, 3].map((at) => interpolate(at, places, values, "hold"))).toEqual([
      0, 5, 10, 0, -10,
    ]);
  });

  it("holds or goes on outside", () => {
    expect(interpolate(-1, places, values, "hold")).toBe(0);
    expect(interpolate(5, places, values, "hold")).toBe(-10);
    expect(interpolate(-1, places, values, "extend")).toBe(-10);
    expect(interpolate(5, places, values, "extend")).toBe(-30);
  });

  it("never leaves the span of the values when it holds", () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), (at) => {
        const value = interpolate(at, places, values, "hold");
        expect(value).toBeGreaterThanOrEqual(-10);
        expect(value).toBeLessThanOrEqual(10);
      }),
      { seed: 7 },
    );
  });
});
