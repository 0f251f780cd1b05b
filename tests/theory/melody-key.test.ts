import { describe, expect, it } from "vitest";
import type { PitchClass } from "../../src/base/index.ts";
import type { Key, Letter } from "../../src/theory/index.ts";
import { diatonicSuffix, fifthsOf, keyText, scaleOf } from "../../src/theory/melody-key.ts";

const key = (letter: Letter, alteration = 0, mode: Key["mode"] = "major"): Key => ({
  tonic: { letter, alteration },
  mode,
});
const pc = (value: number) => value as PitchClass;

describe("keys", () => {
  it("has the signatures of W3C MusicXML 4.0, element fifths", () => {
    const cases: readonly (readonly [Key, number])[] = [
      [key("C"), 0],
      [key("E", -1), -3],
      [key("F", 1), 6],
      [key("A", 0, "minor"), 0],
      [key("C", 1, "minor"), 4],
      [key("B", -1, "minor"), -5],
    ];
    for (const [one, fifths] of cases) expect(fifthsOf(one)).toBe(fifths);
  });

  it("has seven notes in major and the leading tone besides in minor (common practice)", () => {
    expect(scaleOf(key("D"))).toEqual([2, 4, 6, 7, 9, 11, 1]);
    expect(scaleOf(key("A", 0, "minor"))).toEqual([9, 11, 0, 2, 4, 5, 7, 8]);
  });

  it("has the seventh chords of the major key (common practice)", () => {
    const found = [0, 2, 4, 5, 7, 9, 11].map((root) => diatonicSuffix(key("C"), pc(root)));
    expect(found).toEqual(["maj7", "m7", "m7", "maj7", "7", "m7", "m7(b5)"]);
    expect(diatonicSuffix(key("C"), pc(1))).toBeUndefined();
  });

  it("has the dominant with its raised third in minor (common practice)", () =>
    expect(diatonicSuffix(key("C", 0, "minor"), pc(7))).toBe("7"));

  it("is written in words", () =>
    expect(keyText(key("E", -1, "minor"), { signs: "unicode" })).toBe("E♭ minor"));
});
