import { describe, expect, it } from "vitest";
import { fifthsPairs } from "../../../src/voicing/index.ts";
import { isFifthsPair } from "../../../src/voicing/techniques/fifths-pair.ts";
import { chordOf, everyTone, pitch, pitches, plain } from "./questions.ts";

describe("fifths pair", () => {
  it("puts the one on the root first", () => {
    const [first] = fifthsPairs(chordOf("Cmaj7#11"), pitch("F#5"), everyTone);
    expect((first?.[0] ?? 0) % 12).toBe(0);
  });

  it("is not there without its tones", () =>
    expect(fifthsPairs(chordOf("C7"), pitch("E5"), plain(chordOf("C7")))).toEqual([]));

  it("is recognised by four fifths and the step between them", () => {
    expect(isFifthsPair(pitches("C3 G3 D4 Eb4 Bb4 F5"))).toBe(true);
    expect(isFifthsPair(pitches("C3 G3 D4 E4 B4 F#5"))).toBe(true);
    expect(isFifthsPair(pitches("C3 G3 D4 F4 C5 G5"))).toBe(false);
    expect(isFifthsPair(pitches("C3 G3 D4 A4"))).toBe(false);
  });
});
