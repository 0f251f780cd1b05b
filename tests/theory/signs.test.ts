import { describe, expect, it } from "vitest";
import { accidentalText, alterationOf, plainSigns } from "../../src/theory/signs.ts";

describe("signs", () => {
  it("become plain ones that remember where they stood", () => {
    expect(plainSigns("A𝄫m7♯x")).toEqual({
      text: "Abbm7#x",
      typedAt: [0, 1, 1, 3, 4, 5, 6, 7],
    });
    expect(plainSigns("")).toEqual({ text: "", typedAt: [0] });
  });

  it("turn into alterations and back", () => {
    for (const alteration of [-2, -1, 0, 1, 2])
      expect(alterationOf(accidentalText(alteration, "ascii"))).toBe(alteration);
    expect(accidentalText(-1, "unicode")).toBe("♭");
    expect(accidentalText(2, "unicode")).toBe("♯♯");
  });

  it("stop at double accidentals", () => {
    expect(() => accidentalText(3, "ascii")).toThrow(RangeError);
    expect(() => accidentalText(0.5, "ascii")).toThrow(RangeError);
  });
});
