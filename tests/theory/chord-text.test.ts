import { describe, expect, it } from "vitest";
import { chordSuffix } from "../../src/theory/chord-text.ts";
import { draftOf, emptyWork } from "../../src/theory/chord-work.ts";
import { chord } from "./support/chords.ts";

describe("the one spelling of a chord", () => {
  it("has no suffix for a major triad", () => {
    expect(chordSuffix(draftOf(emptyWork("C")), "ascii")).toBe("");
  });

  it("prints words, and all marks in one bracket in printed order", () => {
    const known = {
      "C-9": "Cm9",
      CΔ: "Cmaj7",
      "C-Δ7": "Cm(maj7)",
      "C7#9b13": "C7(#9,b13)",
      C13sus: "C13sus4",
      Cø7: "Cm7(b5)",
      "C°7": "Cdim7",
      C7omit3: "C7(no3)",
      Cm7add11: "Cm7(add11)",
      "C°7(maj7)": "Cdim7(addmaj7)",
      Cmaj7sus4: "Cmaj7sus4",
      Calt: "C7alt",
    };
    for (const [typed, symbol] of Object.entries(known)) expect(chord(typed).symbol).toBe(symbol);
  });

  it("prints signs for people", () => {
    const known = {
      Cm7b5: "Cø7",
      Cdim7: "C°7",
      Ebm9b5: "E♭ø9",
      "F#7b9#11/Bb": "F♯7(♭9,♯11)/B♭",
      Cdim: "C°",
    };
    for (const [typed, shown] of Object.entries(known)) expect(chord(typed).display).toBe(shown);
  });
});
