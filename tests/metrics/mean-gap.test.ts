import { describe, expect, it } from "vitest";
import { meanGap } from "../../src/metrics/mean-gap.ts";
import { read, readSilence } from "./situations.ts";

describe("mean gap", () => {
  it("shares the span over the gaps", () =>
    expect(read(meanGap, "tpt1=D5 alto1=A4 tenor1=Eb4 tbn1=A3")).toMatchObject({
      value: 17 / 3,
      text: "5.67",
      detail: "3 gaps over 17 semitones.",
    }));

  it("is not defined for one note", () => {
    expect(read(meanGap, "tpt1=D5").value).toBeNull();
    expect(readSilence(meanGap).value).toBeNull();
  });
});
