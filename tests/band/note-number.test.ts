import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { noteNumber, pitchName } from "../../src/band/note-number.ts";

describe("pitch names of the tables", () => {
  it("follow scientific pitch notation", () => {
    expect(noteNumber("C4")).toBe(60);
    expect(noteNumber("A0")).toBe(21);
    expect(noteNumber("C8")).toBe(108);
    expect(noteNumber("F#3")).toBe(54);
    expect(noteNumber("Bb1")).toBe(34);
  });

  it.each(["H4", "c4", "C", "Cx4", ""])("refuse %o", (name) => {
    expect(() => noteNumber(name)).toThrow(RangeError);
  });

  it("come back from every note of the piano", () => {
    for (let midi = 21; midi <= 108; midi += 1)
      expect(noteNumber(pitchName(soundingMidi(midi)))).toBe(midi);
  });
});
