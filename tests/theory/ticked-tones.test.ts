import { describe, expect, it } from "vitest";
import { tickedTones } from "../../src/theory/ticked-tones.ts";
import type { Colour } from "../../src/theory/index.ts";
import { chord } from "./support/chords.ts";

const ticked = (symbol: string, colour: Colour) => tickedTones(chord(symbol), colour).join(" ");

describe("tickedTones", () => {
  it("plain: what the symbol states and implies", () => {
    expect(ticked("C", "plain")).toBe("0 4 7");
    expect(ticked("F13", "plain")).toBe("0 2 4 7 9 10");
    expect(ticked("Cmaj7", "plain")).toBe("0 4 7 11");
    expect(ticked("C7(b9,b13)", "plain")).toBe("0 1 4 8 10");
  });

  // Substitution lists after G. Lindsay, Jazz Arranging Techniques, 2005, ch. 10.
  it("tensions: with the natural tensions of the family", () => {
    const known = {
      F13: "0 2 4 7 9 10",
      C7: "0 2 4 7 9 10",
      Cm9: "0 2 3 5 7 10",
      Cmaj7: "0 2 4 7 9 11",
      C6: "0 2 4 7 9",
      Cm6: "0 2 3 5 7 9",
      C9sus4: "0 2 5 7 9 10",
      Cm7b5: "0 2 3 5 6 8 10",
      Cdim7: "0 2 3 5 6 8 9 11",
      C7alt: "0 1 3 4 6 8 10",
    };
    for (const [symbol, tones] of Object.entries(known))
      expect(ticked(symbol, "tensions"), symbol).toBe(tones);
  });

  it("tensions: leave a bare triad alone", () => {
    expect(ticked("C", "tensions")).toBe("0 4 7");
    expect(ticked("Cm", "tensions")).toBe("0 3 7");
    expect(ticked("Csus4", "tensions")).toBe("0 5 7");
  });

  it("tensions: give way to printed alterations", () => {
    expect(ticked("C7b9", "tensions")).toBe("0 1 4 7 10");
    expect(ticked("C7#11", "tensions")).toBe("0 2 4 6 7 9 10");
    expect(ticked("C7#5", "tensions")).toBe("0 2 4 8 10");
    expect(ticked("Cmaj7#5", "tensions")).toBe("0 2 4 8 11");
  });

  it("altered: ♭9 ♯9 ♯11 ♭13, natural 5, 9 and 13 only where printed", () => {
    expect(ticked("C7", "altered")).toBe("0 1 3 4 6 8 10");
    expect(ticked("C7alt", "altered")).toBe("0 1 3 4 6 8 10");
    expect(ticked("C7(b9)", "altered")).toBe("0 1 3 4 6 8 10");
    expect(ticked("F13", "altered")).toBe("0 1 3 4 6 8 9 10");
    expect(ticked("C7sus4", "altered")).toBe("0 1 3 5 8 10");
  });

  it("altered: is the same as tensions on chords that are no dominants", () => {
    for (const symbol of ["Cmaj7", "Cm9", "Cdim7", "C", "Cm7b5"])
      expect(ticked(symbol, "altered")).toBe(ticked(symbol, "tensions"));
  });

  it("always includes a slash bass", () => {
    expect(ticked("F/F#", "plain")).toBe("0 1 4 7");
    expect(ticked("C7/D", "altered")).toBe("0 1 2 3 4 6 8 10");
  });

  it("is empty without a chord", () => {
    expect(ticked("N.C.", "tensions")).toBe("");
  });
});
