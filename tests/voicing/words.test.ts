import { describe, expect, it } from "vitest";
import { quantity, type Semitones } from "../../src/base/index.ts";
import { degreeName } from "../../src/voicing/degree-name.ts";
import { countWord, intervalWord, listWords, nameIn, roleWord } from "../../src/voicing/words.ts";
import { ask, midi } from "./support/questions.ts";

const { chord } = ask("F13", "D5", "f");
const altered = ask("C7alt", "Bb5", "f").chord;

describe("words for music", () => {
  it("name intervals up to a twelfth and count semitones above", () => {
    const words = [1, 6, 12, 16, 19, 20].map((semitones) =>
      intervalWord(quantity<Semitones>(semitones)),
    );
    expect(words).toEqual([
      "a semitone",
      "a tritone",
      "an octave",
      "a major tenth",
      "a twelfth",
      "20 semitones",
    ]);
  });

  it("spell notes as the chord does, and name what they are in it", () => {
    expect(nameIn(midi("D#4"), chord)).toBe("E♭4");
    expect(["F3", "A3", "Eb4", "G4", "D4"].map((note) => roleWord(midi(note), chord))).toEqual([
      "the root",
      "the third",
      "the seventh",
      "the ninth",
      "the thirteenth",
    ]);
    expect(roleWord(midi("Db4"), altered)).toBe("the ♭9");
    expect(roleWord(midi("C4"), ask("N.C.", "C5", "f").chord)).toBe("a note without a chord");
    expect(degreeName(10, chord)).toBe("seventh");
    expect(degreeName(1, altered)).toBe("♭9");
  });

  it("count in words up to nine, and form the plural of sax", () => {
    expect(countWord(1, "trumpet")).toBe("one trumpet");
    expect(countWord(2, "sax")).toBe("two saxes");
    expect(countWord(10, "player")).toBe("10 players");
  });

  it("join things as one says them", () => {
    expect(listWords(["A3"])).toBe("A3");
    expect(listWords(["A3", "C4"])).toBe("A3 and C4");
    expect(listWords(["A3", "C4", "G4"])).toBe("A3, C4 and G4");
  });
});
