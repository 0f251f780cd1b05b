import { describe, expect, it } from "vitest";
import { quartalVoicing, quartalWithThirdOnTop } from "../../../src/voicing/index.ts";
import { isQuartal } from "../../../src/voicing/techniques/quartal.ts";
import { chordOf, everyTone, pitch, pitches, plain } from "./questions.ts";

describe("quartal voicings", () => {
  it("stack fourths under the lead", () =>
    expect(quartalVoicing(chordOf("Dm11"), pitch("F4"), 4, everyTone)).toEqual(
      pitches("D3 G3 C4 F4"),
    ));

  it("take an augmented fourth where the scale has one, once at most", () => {
    const white = { ticked: [0, 2, 4, 5, 7, 9, 11] };
    expect(quartalVoicing(chordOf("C"), pitch("E5"), 4, white)).toEqual(pitches("C4 F4 B4 E5"));
    expect(
      quartalVoicing(chordOf("Cdim7"), pitch("A4"), 4, plain(chordOf("Cdim7"))),
    ).toBeUndefined();
  });

  it("refuse too few voices", () => {
    expect(() => quartalVoicing(chordOf("C"), pitch("E5"), 2, everyTone)).toThrow(RangeError);
    expect(() => quartalWithThirdOnTop(chordOf("C"), pitch("E5"), 3, everyTone)).toThrow(
      RangeError,
    );
  });

  it("are recognised by their fourths", () => {
    expect(isQuartal(pitches("D3 G3 C4"))).toBe(true);
    expect(isQuartal(pitches("D3 G3 C4 F4 A4"))).toBe(true);
    expect(isQuartal(pitches("D3 G3 B3"))).toBe(false);
    expect(isQuartal(pitches("C3 F#3 C4"))).toBe(false);
    expect(isQuartal(pitches("D3 G3"))).toBe(false);
  });
});
