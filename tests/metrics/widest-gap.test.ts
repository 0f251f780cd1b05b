import { describe, expect, it } from "vitest";
import { widestGap } from "../../src/metrics/widest-gap.ts";
import { read, readSilence } from "./situations.ts";

describe("widest gap", () => {
  it("points at its two notes", () =>
    expect(read(widestGap, "tpt1=D5 alto1=A4 tenor1=A3 bari=F2")).toMatchObject({
      value: 16,
      detail: "octave + M3, F2 to A3.",
      notes: [41, 57],
    }));

  it("is the lower one of two as wide", () =>
    expect(read(widestGap, "tpt1=D5 alto1=D4 bari=D3").notes).toEqual([50, 62]));

  it("is not defined for one note", () => {
    expect(read(widestGap, "tpt1=D5").value).toBeNull();
    expect(readSilence(widestGap).value).toBeNull();
  });
});
