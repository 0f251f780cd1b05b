import { describe, expect, it } from "vitest";
import { tuttiGuideTones, tuttiOctaveCopy, tuttiWide } from "../../../src/voicing/index.ts";
import { isGuideTone } from "../../../src/voicing/techniques/tutti.ts";
import { chordOf, pitch, pitches, plain } from "./questions.ts";

// C. Israels, Exploring Jazz Arranging, lesson 19: three ways to write a tutti.
const sizes = { trumpets: 4, trombones: 4, saxes: 5 };
const chord = chordOf("F13");
const lead = pitch("D5");

describe("tuttis", () => {
  it("A: trombones repeat the trumpets an octave lower, saxes double them", () =>
    expect(tuttiOctaveCopy(chord, lead, sizes, plain(chord))).toEqual({
      trumpets: pitches("Eb4 G4 A4 D5"),
      trombones: pitches("Eb3 G3 A3 D4"),
      saxes: pitches("D3 Eb3 G3 A3 D4"),
    }));

  it("B: trombones hold third and seventh, trumpets a triad with the lead doubled below", () => {
    const tutti = tuttiGuideTones(chord, lead, sizes, plain(chord));
    expect(tutti?.trumpets).toEqual(pitches("D4 F4 A4 D5"));
    expect(tutti?.trombones).toEqual(pitches("Eb3 A3 A3 Eb4"));
  });

  it("B is not there where no triad has a tension", () =>
    expect(tuttiGuideTones(chordOf("C"), pitch("C5"), sizes, plain(chordOf("C")))).toBeUndefined());

  it("C: root in baritone and bass trombone, a trombone a fifth above, two on guide tones", () => {
    const tutti = tuttiWide(chord, lead, sizes, plain(chord));
    expect(tutti?.trombones).toEqual(pitches("F2 C3 Eb3 A3"));
    expect(tutti?.saxes[0]).toBe(pitch("F2"));
    expect(tutti?.trumpets).toEqual(pitches("A3 Eb4 G4 D5"));
  });

  it("C needs two octaves and a seventh", () => {
    expect(tuttiWide(chord, pitch("D4"), sizes, plain(chord))).toBeUndefined();
    expect(tuttiWide(chordOf("C"), pitch("G5"), sizes, plain(chordOf("C")))).toBeUndefined();
  });

  it("have one pitch for each player, whatever the section's size", () => {
    for (const build of [tuttiOctaveCopy, tuttiGuideTones, tuttiWide])
      for (let players = 0; players <= 6; players++) {
        const even = { trumpets: players, trombones: players, saxes: players };
        const tutti = build(chord, lead, even, plain(chord));
        expect(tutti?.trumpets).toHaveLength(players);
        expect(tutti?.trombones).toHaveLength(players);
        expect(tutti?.saxes).toHaveLength(players);
      }
  });

  it("know the guide tones", () => {
    expect(isGuideTone(chord, pitch("A3"))).toBe(true);
    expect(isGuideTone(chord, pitch("Eb3"))).toBe(true);
    expect(isGuideTone(chord, pitch("C3"))).toBe(false);
  });
});
