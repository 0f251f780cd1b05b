import { describe, expect, it } from "vitest";
import { span } from "../../src/metrics/span.ts";
import { read, readSilence } from "./situations.ts";

describe("span", () => {
  it("is said in semitones, in octaves, and from where to where", () =>
    expect(read(span, "tpt1=D5 alto1=A4 bari=F2")).toMatchObject({
      value: 33,
      text: "33",
      detail: "2 octaves + M6, F2 to D5.",
      notes: [41, 74],
    }));

  it("is 0 in unison and not defined in silence", () => {
    expect(read(span, "tpt1=D5 tpt2=D5")).toMatchObject({ value: 0, notes: [74] });
    expect(readSilence(span).value).toBeNull();
  });
});
