import { describe, expect, it } from "vitest";
import { groupStacks } from "../../../src/voicing/techniques/group-recipes.ts";
import { chordOf, pitch, pitches, plain } from "./questions.ts";

const names = (symbol: string, horns: number) =>
  groupStacks(chordOf(symbol), pitch("D5"), horns, plain(chordOf(symbol))).map(
    ({ technique }) => technique,
  );

describe("textbook voicings of one group", () => {
  it("use as many notes as there are horns", () => {
    expect(names("F13", 4)).toEqual(["close", "drop-2", "drop-3", "drop-2-4", "spread"]);
    expect(names("F13", 5)).toEqual(["double-lead", "drop-2-double-lead", "spread"]);
    expect(names("F13", 3)).toEqual(["close", "drop-2"]);
    expect(names("G", 4)).toEqual(["double-lead", "drop-2-double-lead"]);
  });

  it("leave out the least needed note for three horns", () =>
    expect(groupStacks(chordOf("F13"), pitch("D5"), 3, plain(chordOf("F13")))[0]?.stack).toEqual(
      pitches("Eb4 A4 D5"),
    ));

  it("do not exist for one horn or without a chord", () => {
    expect(names("F13", 1)).toEqual([]);
    expect(names("N.C.", 4)).toEqual([]);
  });
});
