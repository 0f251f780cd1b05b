import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { pitchName } from "../../src/theory/pitch-in-chord.ts";
import { readPitch } from "../../src/theory/read-pitch.ts";

const midi = (text: string) => {
  const read = readPitch(text);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value.sounding;
};

const problem = (text: string) => {
  const read = readPitch(text);
  if (read.ok) throw new Error(`${text} was read`);
  return read.problem;
};

describe("readPitch", () => {
  it("reads letter, accidental and octave, C4 being middle C", () => {
    // Scientific pitch notation; MIDI 60 = C4, 69 = A4 (ISO 16).
    const known = [
      ["C4", 60],
      ["A4", 69],
      ["D5", 74],
      ["Bb4", 70],
      ["B♭4", 70],
      ["F#3", 54],
      ["F♯3", 54],
      ["C-1", 0],
      ["C−1", 0],
      ["G9", 127],
      ["E♮4", 64],
      [" D 5 ", 74],
    ] as const;
    for (const [text, number] of known) expect(midi(text), text).toBe(number);
  });

  it("reads double accidentals", () => {
    expect(midi("F##4")).toBe(67);
    expect(midi("F𝄪4")).toBe(67);
    expect(midi("Fx4")).toBe(67);
    expect(midi("Bbb3")).toBe(57);
    expect(midi("B𝄫3")).toBe(57);
    expect(midi("B♭♭3")).toBe(57);
  });

  it("lets the octave belong to the letter: C♭4 sounds B3, B♯3 sounds C4", () => {
    expect(midi("Cb4")).toBe(59);
    expect(midi("B#3")).toBe(60);
  });

  it("takes the first letter as the name, small or capital", () => {
    expect(midi("bb4")).toBe(70);
    expect(midi("bbb4")).toBe(69);
    expect(midi("b4")).toBe(71);
    expect(midi("f#3")).toBe(54);
  });

  it("asks for a missing octave and offers three", () => {
    expect(problem("Eb")).toEqual({
      code: "pitch-octave-missing",
      message: "Eb needs its octave, such as Eb4 (C4 is middle C).",
      position: 2,
      suggestions: ["Eb4", "Eb5", "Eb3"],
    });
  });

  it("says what is wrong, where, and what could be meant", () => {
    expect(problem("")).toMatchObject({ code: "pitch-empty", position: 0 });
    expect(problem("  ")).toMatchObject({ code: "pitch-empty" });
    expect(problem("H4")).toMatchObject({ code: "pitch-letter", suggestions: ["B4"] });
    expect(problem(" 5D")).toMatchObject({
      code: "pitch-letter",
      position: 1,
      suggestions: ["D5"],
    });
    expect(problem("74")).toMatchObject({ code: "pitch-letter", suggestions: ["D5"] });
    expect(problem("Cbbb4")).toMatchObject({
      code: "pitch-accidental",
      position: 1,
      suggestions: ["Cb4", "Cbb4"],
    });
    expect(problem("C#b4")).toMatchObject({ code: "pitch-accidental" });
    expect(problem("D12")).toMatchObject({ code: "pitch-octave", position: 1 });
    expect(problem("c''")).toMatchObject({ code: "pitch-octave", suggestions: ["C5"] });
    expect(problem("D5x")).toMatchObject({
      code: "pitch-rest",
      position: 1,
      suggestions: ["D5"],
    });
    expect(problem("G#9")).toMatchObject({ code: "pitch-range" });
    expect(problem("Cb-1")).toMatchObject({ code: "pitch-range" });
  });

  it("reads back the name of every pitch there is", () => {
    for (let number = 0; number <= 127; number++) {
      const pitch = soundingMidi(number);
      expect(midi(pitchName(pitch))).toBe(number);
      expect(midi(pitchName(pitch, undefined, { signs: "unicode" }))).toBe(number);
    }
  });

  it("answers any text at all, with readable suggestions", () => {
    const near = fc.string({
      unit: fc.constantFrom(..."ABbcCdGgh#♭♯xn0123456789-' "),
      maxLength: 7,
    });
    fc.assert(
      fc.property(fc.oneof(fc.string(), near, fc.string({ unit: "binary" })), (typed) => {
        const read = readPitch(typed);
        if (read.ok) {
          expect(read.value.sounding % 12).toBe(read.value.pitchClass);
          return;
        }
        expect(read.problem.message).toMatch(/[.]$/);
        expect(read.problem.position).toBeLessThanOrEqual(typed.length);
        for (const one of read.problem.suggestions ?? []) expect(readPitch(one).ok).toBe(true);
      }),
      { seed: 7, numRuns: 3000 },
    );
  });
});
