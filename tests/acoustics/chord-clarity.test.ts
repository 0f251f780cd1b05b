import { describe, expect, it } from "vitest";
import { chordClarity, salienceProfile } from "../../src/acoustics/chord-clarity.ts";
import { pitchClassProfile } from "../../src/acoustics/parncutt-1988.ts";
import { analyseSonority, chromaticLevelsOfPitches } from "../../src/acoustics/parncutt-1994.ts";
import type { PitchClass, SoundingMidi } from "../../src/base/index.ts";

const ask = (classes: readonly number[], root: number, bass?: number) =>
  chordClarity({
    profile: pitchClassProfile(classes as PitchClass[]),
    root: root as PitchClass,
    ...(bass === undefined ? {} : { bass: bass as PitchClass }),
  });

describe("chord clarity", () => {
  it("of a major triad is surer than of a minor one, and that than of a diminished one", () => {
    const [major, minor, diminished] = [
      [0, 4, 7],
      [0, 3, 7],
      [0, 3, 6],
    ].map((c) => ask(c, 0));
    expect(major!.clarity).toBeGreaterThan(minor!.clarity);
    expect(minor!.clarity).toBeGreaterThan(diminished!.clarity);
    expect(major!.support).toBe(1);
  });

  // Common practice, no single source: a rootless voicing needs its bass, C6 over A is Am7.
  it("of a rootless thirteenth comes with the bass", () => {
    const alone = ask([2, 4, 9, 10], 0);
    const overRoot = ask([2, 4, 9, 10], 0, 0);
    expect(alone.support).toBeLessThan(0.5);
    expect(overRoot.support).toBe(1);
    expect(overRoot.clarity).toBeGreaterThan(0.55);
  });

  it("goes from C6 to A minor seven with A in the bass", () => {
    expect(ask([0, 4, 7, 9], 0, 0).support).toBe(1);
    expect(ask([0, 4, 7, 9], 9, 9).support).toBe(1);
    expect(ask([0, 4, 7, 9], 0, 9).support).toBeLessThan(1);
    expect(ask([0, 4, 7, 9], 0, 9).rival).toBe(9);
  });

  it("counts a bass as sounding whatever the profile says", () => {
    expect([...ask([4, 7], 0, 0).weights]).toEqual([...ask([0, 4, 7], 0, 0).weights]);
  });

  it("names the strongest rival and a toss-up at one half", () => {
    const tritone = ask([4, 10], 4);
    expect(tritone.rival).toBe(10);
    expect(tritone.clarity).toBe(0.5);
  });

  it("needs a note", () => expect(() => ask([], 0)).toThrow(/sounding note, got none/));
});

describe("the profile of what is noticed", () => {
  const profileOf = (midi: readonly number[]) =>
    salienceProfile(analyseSonority(chromaticLevelsOfPitches(midi as SoundingMidi[])));

  it("gives the most salient class 1", () => {
    expect(Math.max(...profileOf([48, 64, 67]))).toBe(1);
    expect(profileOf([])).toEqual(new Float64Array(12));
  });

  // Common practice, no single source: low trombones lose the chord's identity.
  it.each(Array.from({ length: 12 }, (_none, index) => index - 6))(
    "makes a low dominant ninth less clear than one in the effective register, %i from C",
    (key) => {
      const root = ((36 + key) % 12) as PitchClass;
      const clarity = (midi: readonly number[]) =>
        chordClarity({ profile: profileOf(midi.map((note) => note + key)), root }).clarity;
      const sonorous = (midi: readonly number[]) =>
        analyseSonority(chromaticLevelsOfPitches(midi.map((note) => note + key) as SoundingMidi[]))
          .complexSonorousness;
      expect(clarity([36, 40, 46, 50])).toBeLessThan(clarity([52, 58, 62, 67]));
      expect(sonorous([36, 40, 46, 50])).toBeLessThan(sonorous([52, 58, 62, 67]));
    },
  );
});
