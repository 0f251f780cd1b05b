import { describe, expect, it } from "vitest";
import { spelledToMidi, type Key } from "../../src/theory/index.ts";
import { noteKind } from "../../src/phrase/note-kind.ts";
import { chordOf, spelled } from "./support/phrases.ts";

const cMajor: Key = { tonic: { letter: "C", alteration: 0 }, mode: "major" };
const kind = (note: string, chord: string) =>
  noteKind(spelledToMidi(spelled(note)), chordOf(chord), cMajor);

describe("what a melody note is in its chord", () => {
  it("takes what the symbol states or implies for chord tones", () => {
    expect(kind("B4", "Cmaj7")).toBe("chord-tone");
    expect(kind("D5", "C13")).toBe("chord-tone");
  });

  it("takes the fourth over a major chord for a scale tone, not a tension (the eleventh clashes: G. Lindsay)", () =>
    expect(kind("F4", "Cmaj7")).toBe("scale-tone"));

  it("takes an altered tension of a dominant for a tension although it is outside the key", () =>
    expect(kind("Ab4", "G7")).toBe("tension"));

  it("finds the rest outside", () => expect(kind("C#5", "Fmaj7")).toBe("outside"));
});
