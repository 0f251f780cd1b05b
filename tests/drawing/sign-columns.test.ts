import { describe, expect, it } from "vitest";
import { signColumns } from "../../src/drawing/sign-columns.ts";
import type { AccidentalSign } from "../../src/notation/index.ts";

const signs = (sign: AccidentalSign, ...steps: number[]) => steps.map((step) => ({ sign, step }));

// common practice, no single source: signs a seventh or more apart share a column, flats a sixth.
describe("columns of accidentals", () => {
  it("take one sign next to its head", () => {
    expect(signColumns(signs("sharp", 4))).toEqual([0]);
  });

  it("put sharps a seventh apart above each other, a sixth apart side by side", () => {
    expect(signColumns(signs("sharp", 0, 6))).toEqual([0, 0]);
    expect(signColumns(signs("sharp", 0, 5))).toEqual([1, 0]);
  });

  it("put flats a sixth apart above each other", () => {
    expect(signColumns(signs("flat", 0, 5))).toEqual([0, 0]);
    expect(signColumns(signs("flat", 0, 4))).toEqual([1, 0]);
  });

  it("set the outer signs of a triad near, the middle one apart", () => {
    expect(signColumns(signs("sharp", 0, 3, 6))).toEqual([0, 1, 0]);
  });

  it("leave notes without a sign out of account", () => {
    const mixed = [...signs("flat", 0), ...signs("none", 1, 2), ...signs("flat", 6)];
    expect(signColumns(mixed)).toEqual([0, 0, 0, 0]);
  });

  it("set the signs of two forms of one letter in the order of their heads", () => {
    const pair = [...signs("flat", 3), ...signs("sharp", 3)];
    expect(signColumns(pair)).toEqual([1, 0]);
  });

  it("fit octaves of one sharp into one column", () => {
    expect(signColumns(signs("sharp", -7, 0, 7, 14))).toEqual([0, 0, 0, 0]);
  });
});
