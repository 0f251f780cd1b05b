import { describe, expect, it } from "vitest";
import { countText, intervalText, numberText, percentText } from "../../src/metrics/number-text.ts";

describe("numbers for people", () => {
  it("keeps whole numbers plain", () => {
    expect(numberText(33, 2)).toBe("33");
    expect(numberText(2.5, 2)).toBe("2.50");
  });

  it("says intervals in octaves and the rest", () => {
    const said = [0, 1, 6, 12, 19, 24, 33].map((semitones) => intervalText(semitones as never));
    expect(said).toEqual([
      "unison",
      "m2",
      "TT",
      "octave",
      "octave + P5",
      "2 octaves",
      "2 octaves + M6",
    ]);
  });

  it("counts in the singular and the plural", () => {
    expect(countText(1, "sax", "saxes")).toBe("1 sax");
    expect(countText(5, "sax", "saxes")).toBe("5 saxes");
    expect(countText(0, "note")).toBe("0 notes");
  });

  it("rounds shares to whole percent", () => expect(percentText(0.404)).toBe("40 %"));
});
