import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { upperStructures } from "../../../src/voicing/index.ts";
import {
  guideTonesBelow,
  isUpperStructure,
  triadIn,
  triadTones,
} from "../../../src/voicing/techniques/upper-structure.ts";
import { chordOf, pitch, pitches, plain, someChord, someLead } from "./questions.ts";

describe("upper structures", () => {
  it("name the tones of a triad by the chord below it", () => {
    expect(triadTones(3, "major")).toEqual([3, 7, 10]);
    expect(triadTones(9, "minor")).toEqual([9, 0, 4]);
  });

  it("stand on both guide tones, as close below as they go", () => {
    const chord = chordOf("C7");
    expect(guideTonesBelow(chord, pitch("D4"), plain(chord))).toEqual(pitches("E3 Bb3"));
    expect(guideTonesBelow(chord, pitch("G3"), plain(chord))).toEqual(pitches("Bb2 E3"));
    expect(guideTonesBelow(chordOf("C"), pitch("G3"), plain(chordOf("C")))).toBeUndefined();
  });

  it("need a tension: the triad of the chord itself is none", () => {
    const chord = chordOf("C7");
    expect(upperStructures(chord, pitch("C5"), plain(chord))).toEqual([]);
    expect(triadIn(chord, pitches("E4 G4 C5"))).toBeUndefined();
    expect(triadIn(chord, pitches("D4 F#4 A4"))).toEqual({ triadRoot: 2, triadQuality: "major" });
  });

  it("put the triad with most tensions first", () => {
    const ticked = [0, 2, 4, 6, 7, 9, 10];
    const [first] = upperStructures(chordOf("C7"), pitch("A4"), { ticked });
    expect(first).toMatchObject({ triadRoot: 2, triadQuality: "major" });
  });

  it("are recognised with a root below, and not with a triad too wide", () => {
    const chord = chordOf("C13#11");
    expect(isUpperStructure(chord, pitches("C3 E3 Bb3 D4 F#4 A4"))).toBe(true);
    expect(isUpperStructure(chord, pitches("E3 Bb3 D4 A4 F#5"))).toBe(false);
  });

  it("are recognised whatever the chord and the melody", () =>
    fc.assert(
      fc.property(someChord, someLead, ({ chord, options }, lead) => {
        for (const { pitches: stack } of upperStructures(chord, lead, options))
          expect(isUpperStructure(chord, stack)).toBe(true);
      }),
      { seed: 7, numRuns: 300 },
    ));
});
