/**
 * Covers src/notation/note-values.ts, src/notation/tuplet-windows.ts, src/notation/metre-grid.ts and
 * src/notation/bar-stretches.ts: written values are judged as a whole.
 */
import { describe, expect, it } from "vitest";
import { boundaryStrength } from "../../src/notation/metre-grid.ts";
import type { Stretch } from "../../src/notation/bar-shape-types.ts";
import { writtenValues } from "../../src/notation/note-values.ts";
import type { Metre } from "../../src/theory/index.ts";

const FOUR: Metre = { beats: 4, beatType: 4 };

/**
 * Writes stretches given as lengths, rests below 0, in twelfths of a quarter; "q. e^ r" and so on:
 * first letters, a dot, "^" where it is tied on, a number for a tuplet.
 */
function written(lengths: readonly number[], metre = FOUR, offset = 0): string {
  let at = 0;
  const stretches = lengths.map((length): Stretch => {
    const from = at;
    at += Math.abs(length);
    return { from, to: at, isRest: length < 0 };
  });
  const values = writtenValues(stretches, { metre, division: 12, offset });
  const names: Readonly<Record<string, string>> = {
    whole: "w",
    half: "h",
    quarter: "q",
    eighth: "e",
  };
  return values
    .map(({ stretch, value, dots, tuplet }, index) => {
      const isTied = values[index + 1]?.stretch === stretch && !stretches[stretch]!.isRest;
      const name =
        (names[value] ?? value) + (dots ? "." : "") + (tuplet ? String(tuplet.notes) : "");
      return (stretches[stretch]!.isRest ? "r" : "") + name + (isTied ? "^" : "");
    })
    .join(" ");
}

// Grouping by beats with the middle of a bar of four visible: common practice, no single source.
describe("note values in 4/4", () => {
  it.each([
    ["a whole note fills the bar", [48], "w"],
    ["a dotted half from the first beat", [36, 12], "h. q"],
    ["a half on the second beat is tied over the middle", [12, 24, 12], "q q^ q q"],
    ["a dotted half on the second beat is tied over the middle", [12, 36], "q q^ h"],
    ["eighth, quarter, eighth inside a half", [6, 12, 6, 24], "e q e h"],
    ["a quarter off the beat before the middle is tied over it", [18, 12, 18], "q. e^ e e^ q"],
    ["five eighths are tied", [30, 18], "h^ e e^ q"],
    ["rests show the beats", [12, -36], "q rq rh"],
    ["a rest of a quarter and a half is two rests", [-18, 30], "rq re e^ h"],
    ["sixteenths", [3, 3, 6, 9, 3, 24], "16th 16th e e. 16th h"],
  ])("%s", (_, lengths, expected) => {
    expect(written(lengths)).toBe(expected);
  });

  it.each([
    ["eighth triplets", [4, 4, 4, 12, 24], "e3 e3 e3 q h"],
    ["a triplet of quarter and eighth", [8, 4, 36], "q3 e3 q^ h"],
    ["quarter triplets over half a bar", [8, 8, 8, 24], "q3 q3 q3 h"],
    ["a triplet tied into the next beat", [4, 4, 16, 24], "e3 e3 e3^ q h"],
    ["a rest inside a triplet", [4, -4, 4, 12, 24], "e3 re3 e3 q h"],
    ["triplets of sixteenths", [2, 2, 2, 6, 12, 24], "16th3 16th3 16th3 e q h"],
  ])("%s", (_, lengths, expected) => {
    expect(written(lengths)).toBe(expected);
  });
});

describe("note values in other metres", () => {
  it.each<[string, number[], Metre, string]>([
    ["3/4: a half on the second beat", [12, 24], { beats: 3, beatType: 4 }, "q h"],
    [
      "6/8: the second dotted quarter stays visible",
      [6, 24, 6],
      { beats: 6, beatType: 8 },
      "e q^ q e",
    ],
    ["6/8: dotted quarters", [18, 18], { beats: 6, beatType: 8 }, "q. q."],
    ["6/8: a dotted rest is fine", [-18, 18], { beats: 6, beatType: 8 }, "rq. q."],
    ["5/4: a whole bar is tied", [60], { beats: 5, beatType: 4 }, "w^ q"],
    ["2/2: halves are the beats", [12, 24, 12], { beats: 2, beatType: 2 }, "q q^ q q"],
  ])("%s", (_, lengths, metre, expected) => {
    expect(written(lengths, metre)).toBe(expected);
  });

  it("a pickup is grouped as the end of its bar", () => {
    expect(written([6, 6, 6], FOUR, 30)).toBe("e e e");
    expect(written([18], FOUR, 30)).toBe("e^ q");
    expect(written([4, 4], FOUR, 40)).toBe("e3 e3");
  });
});

describe("the strength of places", () => {
  it("falls from bar line to middle, beat, half and quarter beat", () => {
    const grid = { metre: FOUR, division: 12 };
    expect([0, 24, 12, 6, 3, 1].map((at) => boundaryStrength(at, grid))).toEqual([
      5, 4, 3, 2, 1, 0,
    ]);
  });
});

it("refuses lengths that no tuplet divides", () => {
  const stretches = [
    { from: 0, to: 1, isRest: false },
    { from: 1, to: 17, isRest: false },
  ];
  const shape = { metre: { beats: 1, beatType: 4 }, division: 17, offset: 0 };
  expect(() => writtenValues(stretches, shape)).toThrow(RangeError);
});
