import { describe, expect, it } from "vitest";
import { accidentalMemory } from "../../src/notation/accidental-memory.ts";
import { keyOfFifths } from "../../src/files/musicxml/key-of-fifths.ts";
import { fifthsOf } from "../../src/theory/index.ts";
import { pitchOf } from "../files/support/scores.ts";

/** Bars of note names; what each shows: "#", "b", "n", brackets round a courtesy, "." for nothing. */
function shown(fifths: number, ...bars: readonly string[]): string {
  const memory = accidentalMemory();
  const signs: Readonly<Record<string, string>> = {
    sharp: "#",
    flat: "b",
    natural: "n",
    "double-sharp": "##",
    "flat-flat": "bb",
  };
  return bars
    .map((bar) => {
      memory.beginBar(fifths);
      return bar
        .split(" ")
        .map((name) => {
          const found = memory.shown(pitchOf(name));
          if (found === undefined) return ".";
          return found.isCourtesy ? `(${signs[found.name]})` : signs[found.name];
        })
        .join(" ");
    })
    .join(" | ");
}

// An accidental holds for its line to the end of the bar: common practice, no single source.
describe("accidentals", () => {
  it.each([
    ["are shown once for a line in a bar", 0, ["F#4 F#4 G4"], "# . ."],
    ["are shown again in the next bar", 0, ["F#4", "F#4"], "# | #"],
    ["are not shown where the signature has them", 1, ["F#4 C5 B4"], ". . ."],
    ["cancel the signature", -2, ["B4 Bb4 E5"], "n b n"],
    ["go back to the natural in one bar", 0, ["Bb4 B4"], "b n"],
    ["may be double", 0, ["F##4 Bbb4"], "## bb"],
  ])("%s", (_, fifths, bars, expected) => {
    expect(shown(fifths, ...bars)).toBe(expected);
  });

  // Score and parts: bar 1 F#, bar 2 F shows a natural; F#4 then F5 in one bar shows one too.
  it("are shown as a courtesy in the next bar and in another octave", () => {
    expect(shown(0, "F#4", "F4 F4")).toBe("# | (n) .");
    expect(shown(0, "F#4 F5")).toBe("# (n)");
    expect(shown(0, "F#4 C5", "G4", "F4")).toBe("# . | . | .");
  });
});

describe("the key of a signature", () => {
  it("is that of the circle of fifths, major and minor", () => {
    for (const mode of ["major", "minor"])
      for (let fifths = -7; fifths <= 7; fifths += 1)
        expect(fifthsOf(keyOfFifths(fifths, mode))).toBe(fifths);
    expect(keyOfFifths(-3, "major").tonic).toEqual({ letter: "E", alteration: -1 });
    expect(keyOfFifths(3, "minor").tonic).toEqual({ letter: "F", alteration: 1 });
  });

  it("is read enharmonically beyond seven signs", () => {
    expect(keyOfFifths(8, "major").tonic).toEqual({ letter: "A", alteration: -1 });
  });
});
