import { describe, expect, it } from "vitest";
import { isSpread } from "../../../src/voicing/techniques/recognise-spread.ts";
import { chordOf, pitches } from "./questions.ts";

describe("recognising a spread", () => {
  it("wants root, guide tone and the other guide tone", () => {
    expect(isSpread(chordOf("Cmaj7"), pitches("C3 B3 E4 G4 D5"))).toBe(true);
    expect(isSpread(chordOf("Cmaj7"), pitches("E3 B3 C4 G4"))).toBe(false);
    expect(isSpread(chordOf("Cmaj7"), pitches("C3 G3 E4 B4"))).toBe(false);
    expect(isSpread(chordOf("C7"), pitches("C3 E3 G3 D4"))).toBe(false);
  });

  it("allows the fifth above the root of a triad", () =>
    expect(isSpread(chordOf("C"), pitches("C3 G3 E4 D5"))).toBe(true));

  it("refuses gaps over an octave, repeated tones and close voicings", () => {
    expect(isSpread(chordOf("C7"), pitches("C3 Bb3 E4 G5"))).toBe(false);
    expect(isSpread(chordOf("C7"), pitches("C3 E3 Bb3 E4"))).toBe(false);
    expect(isSpread(chordOf("C7"), pitches("C4 E4 G4 Bb4"))).toBe(false);
    expect(isSpread(chordOf("C7"), [])).toBe(false);
  });
});
