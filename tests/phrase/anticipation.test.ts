import { describe, expect, it } from "vitest";
import { beatLength } from "../../src/theory/index.ts";
import { anticipatedChange } from "../../src/phrase/anticipation.ts";
import { melodyOf, read } from "./support/phrases.ts";

function taken(text: string, index: number): string | undefined {
  const melody = melodyOf(text);
  const { notes, changes } = read(melody);
  const note = notes[index];
  if (!note) throw new Error("no such note");
  return anticipatedChange(note, notes[index + 1], changes, beatLength(melody))?.chord.symbol;
}

describe("anticipations (common practice)", () => {
  it("take the coming chord when an upbeat is held into it", () =>
    expect(taken("C5:7/2@C6 A4:1/2~ | A4:4@F6", 1)).toBe("F6"));

  it("take it when the upbeat is short and nothing is struck on the beat", () =>
    expect(taken("C5:7/2@C6 A4:1/2 | r:1@F6 C5:3", 1)).toBe("F6"));

  it("keep their own chord when the next note is struck on the beat", () =>
    expect(taken("C5:7/2@C6 A4:1/2 | C5:4@F6", 1)).toBeUndefined());

  it("keep it when the note comes a whole beat before", () =>
    expect(taken("C5:3@C6 A4:1~ | A4:4@F6", 1)).toBeUndefined());

  it("give notes before the first chord that chord", () =>
    expect(taken("A4:1 | C5:4@F6", 0)).toBe("F6"));
});
