import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { readChord } from "../../src/theory/read-chord.ts";
import { requiredGroups } from "../../src/theory/required-groups.ts";
import { REQUIRED_GROUPS } from "../../src/theory/required-groups-table.ts";
import { TENSIONS } from "../../src/theory/tension-table.ts";
import { tickedTones } from "../../src/theory/ticked-tones.ts";
import { parseDegree } from "../../src/theory/degree.ts";
import { chord, numbers, qualities, tails } from "./support/chords.ts";

const groups = (symbol: string) =>
  requiredGroups(chord(symbol))
    .map((group) => group.join("|"))
    .join(" ");

describe("requiredGroups", () => {
  // Guide tones identify a chord: common practice, no single source.
  const known: readonly (readonly [string, string])[] = [
    ["C", "4"],
    ["Cm", "3"],
    ["Cdim", "3 6"],
    ["C+", "4 8"],
    ["Cadd9", "4 2"],
    ["Csus4", "5"],
    ["Csus2", "2"],
    ["C5", "7"],
    ["C6", "4 9"],
    ["C69", "4 9 2"],
    ["Cm6", "3 9"],
    ["Cmaj9", "4 11 2"],
    ["Cmaj13(#11)", "4 11 6 9"],
    ["Cmaj7(#5)", "4 11 8"],
    ["Cm(maj7)", "3 11"],
    ["C7", "4 10"],
    ["C9", "4 10 2"],
    ["F13", "4 10 9"],
    ["C13(#11)", "4 10 6 9"],
    ["C7(b9,b13)", "4 10 1 8"],
    ["C7(b13,b9)", "4 10 8 1"],
    ["C7alt", "4 10 1|3 6|8"],
    ["C7sus4", "5 10"],
    ["C13sus4", "5 10 9"],
    ["C7sus4(b9)", "5 10 1"],
    ["C11", "5 10"],
    ["Cm11", "3 10 5"],
    ["Cm9", "3 10 2"],
    ["Cm7b5", "3 10 6"],
    ["Cdim7", "3 6 9"],
    ["Cmaj7sus4", "5 11"],
    ["C7sus2", "2 10"],
    ["C°maj7", "3 6 11"],
    ["C7(no3)", "10"],
    ["Ebmaj7/F", "4 11"],
    ["C/D", "4"],
    ["N.C.", ""],
  ];

  it.each(known)("asks %s for %s", (symbol, expected) => {
    expect(groups(symbol)).toBe(expected);
  });

  it("asks only for tones the symbol itself has, and for none twice", () => {
    const symbol = fc
      .tuple(
        fc.constantFrom(...qualities),
        fc.constantFrom(...numbers),
        fc.constantFrom(...tails),
        fc.constantFrom(...tails),
      )
      .map((parts) => `C${parts.join("")}`);
    fc.assert(
      fc.property(symbol, (typed) => {
        const read = readChord(typed);
        if (!read.ok) return;
        const asked = requiredGroups(read.value).flat();
        expect(new Set(asked).size).toBe(asked.length);
        const plain = tickedTones(read.value, "plain");
        for (const tone of asked) expect(plain).toContain(tone);
      }),
      { seed: 7, numRuns: 2000 },
    );
  });
});

describe("the tables of chord families", () => {
  it("have a source and semitones from 0 to 11 in every row of required groups", () => {
    for (const [family, row] of Object.entries(REQUIRED_GROUPS)) {
      expect(row.source.length, family).toBeGreaterThan(10);
      for (const tone of [...row.groups.flat(), ...row.printedOrder.flat()]) {
        expect(Number.isInteger(tone)).toBe(true);
        expect(tone).toBeGreaterThan(0);
        expect(tone).toBeLessThan(12);
      }
    }
  });

  it("have a source and well-formed degrees, each once, in every row of tensions", () => {
    for (const [family, row] of Object.entries(TENSIONS)) {
      expect(row.source.length, family).toBeGreaterThan(10);
      const labels = [...row.natural, ...row.further, ...row.avoid];
      const notes = labels.map((label) => parseDegree(label).aboveRoot);
      expect(new Set(notes).size, family).toBe(labels.length);
    }
  });
});
