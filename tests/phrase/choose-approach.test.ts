import { describe, expect, it } from "vitest";
import type { Key } from "../../src/theory/index.ts";
import { chooseApproach, noChord } from "../../src/phrase/choose-approach.ts";
import { chordOf, spelled } from "./support/phrases.ts";

const key: Key = { tonic: { letter: "C", alteration: 0 }, mode: "major" };
const choice = (from: string, to: string, target: string) => {
  const found = chooseApproach({
    from: spelled(from),
    into: spelled(to),
    target: chordOf(target),
    key,
  });
  return `${found.technique} ${found.chord.symbol}`;
};

describe("the automatic choice of a technique", () => {
  it("slides notes outside the key that move by a semitone", () =>
    expect(choice("D#5", "E5", "Cmaj7")).toBe("chromatic Bmaj7"));

  it("moves notes outside the key that move by a tone in parallel", () =>
    expect(choice("F#5", "E5", "C6")).toBe("parallel D6"));

  it("brings notes of the key home with a diminished chord where that is the dominant's (sixth-diminished practice)", () =>
    expect(choice("F5", "E5", "C6")).toBe("diminished Bdim7"));

  it("takes another form of the dominant where the diminished chord would be a foreign one", () =>
    expect(choice("A5", "G5", "Cmaj7")).toBe("dominant G9"));

  it("stays in the key on the way into a minor seventh or a dominant", () => {
    expect(choice("E5", "D5", "Dm7")).toBe("diatonic Em7");
    expect(choice("A5", "G5", "G7")).toBe("diatonic Am7");
  });

  it("cannot approach silence", () =>
    expect(() =>
      chooseApproach({ from: spelled("D5"), into: spelled("C5"), target: noChord(), key }),
    ).toThrow(RangeError));
});
