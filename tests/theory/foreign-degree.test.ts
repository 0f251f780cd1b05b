import { describe, expect, it } from "vitest";
import { foreignDegree } from "../../src/theory/foreign-degree.ts";
import { chord } from "./support/chords.ts";

describe("foreignDegree", () => {
  it("calls the tritone ♭5 over a minor third and ♯11 over a major one", () => {
    expect(foreignDegree(6, chord("Cm7").tones)).toBe("b5");
    expect(foreignDegree(6, chord("C7").tones)).toBe("#11");
  });

  it("counts sixths on chords without a seventh", () => {
    expect(foreignDegree(9, chord("Cm").tones)).toBe("6");
    expect(foreignDegree(8, chord("C").tones)).toBe("b6");
    expect(foreignDegree(9, chord("Cm7").tones)).toBe("13");
  });

  it("knows twelve semitones only", () => {
    expect(() => foreignDegree(12, chord("C").tones)).toThrow(RangeError);
  });
});
