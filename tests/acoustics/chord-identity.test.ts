import { describe, expect, it } from "vitest";
import { chordClarity } from "../../src/acoustics/chord-clarity.ts";
import { chordIdentity, heardProfile, type HeardTone } from "../../src/acoustics/chord-identity.ts";
import type { Db, PitchClass } from "../../src/base/index.ts";

const tone = (pitchClass: number, margin: number): HeardTone => ({
  pitchClass: pitchClass as PitchClass,
  margin: margin as Db,
});
const required = (...classes: number[]): PitchClass[] => classes as PitchClass[];

describe("what is heard of a chord", () => {
  it("goes from nothing at -3 dB to all at 5 dB", () => {
    expect(
      [...heardProfile([tone(0, -3), tone(1, 1), tone(2, 5), tone(3, 30)])].slice(0, 4),
    ).toEqual([0, 0.5, 1, 1]);
  });

  it("takes the best note of a class", () => {
    expect(heardProfile([tone(4, -10), tone(4, 5), tone(4, 0)])[4]).toBe(1);
  });

  it("is as clear as its least heard tone", () => {
    const profile = heardProfile([tone(0, 20), tone(4, 1), tone(10, 5)]);
    expect(chordIdentity(profile, required(4, 10))).toEqual({ identity: 0.5, weakest: 4 });
    expect(chordIdentity(profile, required(10, 4))).toEqual({ identity: 0.5, weakest: 4 });
  });

  it("is lost when a tone is missing and whole when none is asked for", () => {
    expect(chordIdentity(heardProfile([tone(4, 9)]), required(4, 10))).toEqual({
      identity: 0,
      weakest: 10,
    });
    expect(chordIdentity(heardProfile([]), [])).toEqual({ identity: 1, weakest: null });
  });

  it("changes which root is heard when tones are lost", () => {
    const whole = heardProfile([tone(0, 9), tone(4, 9), tone(7, 9)]);
    const rootLost = heardProfile([tone(0, -9), tone(4, 9), tone(7, 9)]);
    const clarity = (profile: Float64Array) => chordClarity({ profile, root: 0 as PitchClass });
    expect(clarity(rootLost).support).toBeLessThan(clarity(whole).support);
  });
});
