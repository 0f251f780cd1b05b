import { describe, expect, it } from "vitest";
import type { Letter, SpelledPitch } from "../../src/theory/index.ts";
import { accidentalSigns } from "../../src/notation/accidental-signs.ts";

const at = (letter: Letter, alteration: number, octave: number): SpelledPitch => ({
  letter,
  alteration,
  octave,
});

describe("accidentals without a key signature", () => {
  // Indiana University composition department, Music Notation Style Guide: a sign holds for its own
  // octave only.
  it("stand before every altered note, in every octave", () => {
    expect(accidentalSigns([at("E", -1, 3), at("E", -1, 4), at("F", 1, 5)])).toEqual([
      "flat",
      "flat",
      "sharp",
    ]);
  });

  // C. Sapp, program for courtesy accidentals: same letter in another octave or staff.
  it("show a natural where the same letter is altered elsewhere in the chord", () => {
    expect(accidentalSigns([at("E", 0, 3), at("D", 1, 4), at("E", -1, 5), at("G", 0, 4)])).toEqual([
      "natural",
      "sharp",
      "flat",
      "none",
    ]);
  });

  it("are left out where nothing is altered", () => {
    expect(accidentalSigns([at("C", 0, 3), at("E", 0, 4)])).toEqual(["none", "none"]);
  });

  it("know double sharps and double flats", () => {
    expect(accidentalSigns([at("F", 2, 4), at("B", -2, 4)])).toEqual([
      "double-sharp",
      "double-flat",
    ]);
  });
});
