import { describe, expect, it } from "vitest";
import { displayDegree, parseDegree, spellDegree } from "../../src/theory/degree.ts";
import { formatPitchClass } from "../../src/theory/spelled-pitch.ts";
import type { Letter } from "../../src/theory/index.ts";

const spelled = (letter: Letter, alteration: number, degree: string) =>
  formatPitchClass(spellDegree({ letter, alteration }, degree).spelled);

describe("degrees", () => {
  it("count semitones from the root, compound ones within the octave", () => {
    const known = { "1": 0, b9: 1, "9": 2, "#9": 3, b3: 3, "11": 5, "#11": 6, "#5": 8, bb7: 9 };
    for (const [label, aboveRoot] of Object.entries(known))
      expect(parseDegree(label).aboveRoot, label).toBe(aboveRoot);
  });

  it("take the letter their number asks for", () => {
    expect(spelled("A", -1, "b3")).toBe("Cb");
    expect(spelled("C", 0, "bb7")).toBe("Bbb");
    expect(spelled("C", 0, "#9")).toBe("D#");
    expect(spelled("B", 1, "3")).toBe("D##");
    expect(spelled("F", -1, "bb7")).toBe("Db");
  });

  it("refuse what is no degree", () => {
    for (const label of ["", "b", "0", "14", "x9", "#b5"])
      expect(() => parseDegree(label), label).toThrow(RangeError);
  });

  it("print with ♭ and ♯ for people", () => {
    expect(["b7", "#11", "bb7", "13"].map(displayDegree)).toEqual(["♭7", "♯11", "♭♭7", "13"]);
  });
});
