import { describe, expect, it } from "vitest";
import {
  aboveRoot,
  basicTone,
  categoryOf,
  choicesFor,
  printedColours,
} from "../../../src/voicing/techniques/categories.ts";
import { chordOf, everyTone, pitch, plain } from "./questions.ts";

describe("places of a four-way voicing", () => {
  it("count from the chord's root", () => {
    expect(aboveRoot(chordOf("F13"), pitch("D5"))).toBe(9);
    expect(aboveRoot(chordOf("C/E"), pitch("E2"))).toBe(4);
  });

  it.each([
    ["C6", "seventh", 9],
    ["Cm7b5", "fifth", 6],
    ["Cdim7", "seventh", 9],
    ["C7sus4", "third", 5],
    ["C11", "third", 5],
    ["Csus2", "third", 2],
    ["C", "seventh", undefined],
  ] as const)("of %s: the %s is named after %s", (symbol, category, tone) =>
    expect(basicTone(chordOf(symbol), category)).toBe(tone),
  );

  it.each([
    ["C13", 2, "root"],
    ["C13", 9, "fifth"],
    ["C6", 9, "seventh"],
    ["Cm7", 5, "fifth"],
    ["Cm7b5", 5, "root"],
    ["C7", 3, "root"],
    ["Cm7", 3, "third"],
    ["C7", 5, "third"],
    ["Cdim7", 5, "third"],
    ["Cdim7", 8, "fifth"],
  ] as const)("in %s (Lindsay's substitutions) tone %i fills the %s", (symbol, tone, category) =>
    expect(categoryOf(chordOf(symbol), tone)).toBe(category),
  );

  it("give a foreign melody the place of the tone a semitone below it", () => {
    expect(categoryOf(chordOf("Cmaj7"), 5)).toBe("third");
    expect(categoryOf(chordOf("C7"), 11)).toBe("seventh");
    expect(categoryOf(chordOf("Cmaj7"), 1)).toBe("root");
    expect(categoryOf(chordOf("Cm7"), 4)).toBe("third");
  });

  it("offer ticked tones only, the plain one first", () => {
    expect(choicesFor(chordOf("C7"), "root", everyTone)).toEqual([0, 2, 1, 3]);
    expect(choicesFor(chordOf("C7"), "root", plain(chordOf("C7")))).toEqual([0]);
    expect(choicesFor(chordOf("C"), "seventh", plain(chordOf("C")))).toEqual([]);
  });

  it("know what the symbol adds to its four plain tones", () => {
    expect(printedColours(chordOf("C13"))).toEqual([2, 9]);
    expect(printedColours(chordOf("C6"))).toEqual([]);
  });
});
