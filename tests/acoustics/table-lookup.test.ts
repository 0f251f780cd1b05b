import { describe, expect, it } from "vitest";
import { interpolate } from "../../src/acoustics/table-lookup.ts";

const ROWS = [
  [10, 1, 100],
  [20, 2, 0],
  [40, 4, 50],
] as const;

describe("reading a table between its rows", () => {
  it("follows straight lines in the column asked for", () => {
    expect(interpolate(ROWS, 15)).toBe(1.5);
    expect(interpolate(ROWS, 30, 2)).toBe(25);
  });

  it("meets the rows and holds beyond them", () => {
    expect(interpolate(ROWS, 20)).toBe(2);
    expect(interpolate(ROWS, 5)).toBe(1);
    expect(interpolate(ROWS, 50)).toBe(4);
  });
});
