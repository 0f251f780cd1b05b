import { describe, expect, it } from "vitest";
import { pitchClass, quantity, soundingMidi } from "../../src/base/index.ts";
import type { SoundingMidi, WrittenMidi } from "../../src/base/index.ts";

describe("units", () => {
  it("are plain numbers at run time", () => {
    expect(quantity<SoundingMidi>(60)).toBe(60);
  });

  it("do not mix: a written note is no sounding note", () => {
    const written = quantity<WrittenMidi>(62);
    // @ts-expect-error mixing sounding and written pitch must not compile
    const sounding: SoundingMidi = written;
    expect(sounding).toBe(62);
  });
});

describe("a sounding MIDI note", () => {
  it.each([0, 60, 127])("may be %i", (value) => expect(soundingMidi(value)).toBe(value));
  it.each([-1, 128, 60.5, NaN, Infinity])("may not be %d, and the error says why", (value) => {
    expect(() => soundingMidi(value)).toThrow(RangeError);
    expect(() => soundingMidi(value)).toThrow(String(value));
  });
});

describe("a pitch class", () => {
  it.each([
    [60, 0],
    [62, 2],
    [71, 11],
    [-1, 11],
    [-12, 0],
    [-13, 11],
  ])("of %i is %i", (semitones, expected) => expect(pitchClass(semitones)).toBe(expected));
});
