import { describe, expect, it } from "vitest";
import { groupsFor, harmonyOf } from "../../src/voicing/harmony.ts";
import type { Inquiry } from "../../src/explore/index.ts";
import { ask, midi } from "./support/questions.ts";

/** Groups of tones that must sound, in semitones above the root. */
function groups(chord: string, lead: string, notes: number, more: Partial<Inquiry> = {}): unknown {
  const question = ask(chord, lead, "f", more);
  return groupsFor(question, harmonyOf(question), notes);
}

describe("tones that must sound", () => {
  // Common practice, no single source: third and seventh first, then what the symbol spells out.
  it("are third and seventh of a dominant, then what is printed, as far as there are notes", () => {
    expect(groups("F7", "C5", 4)).toEqual([[4], [10]]);
    expect(groups("F13", "C5", 4)).toEqual([[4], [10], [9]]);
    expect(groups("F7b9", "C5", 3)).toEqual([[4], [10]]);
    expect(groups("F7b9", "C5", 4)).toEqual([[4], [10], [1]]);
  });

  it("leave out what the melody has already", () => {
    expect(groups("F13", "D5", 5)).toEqual([[4], [10]]);
    expect(groups("Cm9", "Bb4", 5)).toEqual([[3], [2]]);
  });

  it("take one of ♭9 and ♯9 and one of ♯11 and ♭13 for an altered dominant", () => {
    expect(groups("C7alt", "Bb5", 6, { colour: "altered" })).toEqual([[4], [1, 3], [6, 8]]);
  });

  it("ask two notes for a guide tone only", () => {
    expect(groups("F13", "D5", 2)).toEqual([[4, 10]]);
    expect(groups("F13", "A4", 2)).toEqual([]);
  });

  it("ask for the bass note where no bass plays, and for what the user wants", () => {
    expect(groups("F13", "D5", 5, { bassSounds: false })).toEqual([[4], [10], [0]]);
    expect(groups("F13", "D5", 5, { toneChoices: { 2: "required" } })).toEqual([[4], [10], [2]]);
  });

  it("are only the user's own when completeness is switched off", () => {
    const { rules } = ask("F13", "D5", "f");
    const free = { rules: { ...rules, H4: false } };
    expect(groups("F13", "D5", 5, free)).toEqual([]);
    expect(groups("F13", "D5", 5, { ...free, toneChoices: { 7: "required" } })).toEqual([[7]]);
  });
});

describe("a melody that clashes with a tone of the chord", () => {
  it("is answered by a suspended reading when it is the fourth of a major chord", () => {
    // Common practice, no single source.
    const question = ask("Cmaj7", "F5", "f");
    const harmony = harmonyOf(question);
    expect(groupsFor(question, harmony, 5)).toEqual([[9, 2]]);
    expect(harmony.ticked.has(4)).toBe(false);
    expect(harmony.ticked.has(11)).toBe(false);
    expect(harmony.role(midi("F4"))).toBe("3");
    expect(harmony.remarks.join(" ")).toContain("suspended");
  });

  it("has the sixth for the major seventh when it is the root", () => {
    // G. Lindsay, Jazz Arranging Techniques (2005): sixth for seventh under a root lead.
    const question = ask("Cmaj7", "C5", "f");
    const harmony = harmonyOf(question);
    expect(groupsFor(question, harmony, 5)).toEqual([[4], [9]]);
    expect(harmony.ticked.has(11)).toBe(false);
    expect(harmony.role(midi("A3"))).toBe("7");
  });

  it("loses the minor seventh when it is the major seventh, and says so", () => {
    const question = ask("C7", "B4", "f");
    const harmony = harmonyOf(question);
    expect(groupsFor(question, harmony, 5)).toEqual([[4]]);
    expect(harmony.ticked.has(10)).toBe(false);
    expect(harmony.remarks).toHaveLength(1);
  });

  it("keeps a tone that the user requires all the same", () => {
    const harmony = harmonyOf(ask("Cmaj7", "C5", "f", { toneChoices: { 11: "required" } }));
    expect(harmony.ticked.has(11)).toBe(true);
  });
});

describe("what a tone is in its chord", () => {
  const roles = (chord: string, lead: string, notes: string, more: Partial<Inquiry> = {}): string =>
    notes
      .split(" ")
      .map((note) => harmonyOf(ask(chord, lead, "f", more)).role(midi(note)))
      .join(" ");

  it("follows the chord symbol", () => {
    expect(roles("F13", "D5", "F3 A3 C4 Eb4 G4 D4 Gb4")).toBe("R 3 5 7 T T X");
    expect(roles("C7alt", "Bb5", "C3 E3 Bb3 Db4 D#4 F#4 Ab4", { colour: "altered" })).toBe(
      "R 3 7 A A A A",
    );
    expect(roles("C6", "E5", "C3 E3 G3 A3 D4")).toBe("R 3 5 7 T");
    expect(roles("C7sus4", "G4", "C3 F3 G3 Bb3")).toBe("R 3 5 7");
    expect(roles("Bm7b5", "A4", "B2 D3 F3 A3")).toBe("R 3 5 7");
  });

  it("counts a slash bass that is foreign to the chord as a root", () => {
    expect(roles("C/Db", "E5", "Db3 C4")).toBe("R R");
    expect(roles("C/D", "E5", "D3 C4")).toBe("T R");
  });
});

describe("the tolerance of low intervals", () => {
  it("grows as it gets softer, and is nothing when limits are strict", () => {
    // Direction: R. Hoffmann, Low Interval Limits; figures: judgement.
    const at = (dynamic: "f" | "mf" | "p"): number =>
      harmonyOf(ask("F13", "D5", dynamic)).tolerance;
    expect([at("f"), at("mf"), at("p")]).toEqual([1, 2, 3]);
    expect(harmonyOf(ask("F13", "D5", "p", { strictLowIntervals: true })).tolerance).toBe(0);
  });
});
