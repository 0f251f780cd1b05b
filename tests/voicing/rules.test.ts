import { describe, expect, it } from "vitest";
import { makePlayer } from "../../src/band/index.ts";
import { harmonyOf } from "../../src/voicing/harmony.ts";
import {
  isBadNinth,
  isBottomTooLow,
  isFirmBottom,
  isLowColour,
  isTooLowTogether,
  mayPlay,
  registerCostOf,
  widestGapOver,
} from "../../src/voicing/rules.ts";
import { ask, midi } from "./support/questions.ts";

const f13 = harmonyOf(ask("F13", "D5", "f"));
const cMajor = harmonyOf(ask("Cmaj7", "G4", "f"));

describe("a minor ninth between two notes (H6)", () => {
  // C. Israels, Exploring Jazz Arranging, lesson 5: no minor ninths but the ♭9 over the root.
  it("is bad, but for the flat ninth over the root of a dominant", () => {
    const g7 = harmonyOf(ask("G7b9", "F5", "f"));
    expect(isBadNinth(midi("G3"), midi("Ab4"), g7)).toBe(false);
    expect(isBadNinth(midi("B3"), midi("C5"), g7)).toBe(true);
    expect(isBadNinth(midi("B3"), midi("C5"), cMajor)).toBe(true);
    expect(isBadNinth(midi("C3"), midi("Db4"), cMajor)).toBe(true);
    expect(isBadNinth(midi("B3"), midi("C4"), cMajor)).toBe(false);
  });
});

describe("low intervals (H5, H5b)", () => {
  it("may lie under the limit by the tolerance of the dynamic", () => {
    // A minor third may lie on C3 at lowest; f tolerates one semitone, p three.
    const soft = harmonyOf(ask("F13", "D5", "p"));
    expect(isTooLowTogether(midi("B2"), midi("D3"), f13)).toBe(false);
    expect(isTooLowTogether(midi("Bb2"), midi("Db3"), f13)).toBe(true);
    expect(isTooLowTogether(midi("A2"), midi("C3"), soft)).toBe(false);
    expect(isTooLowTogether(midi("Ab2"), midi("B2"), soft)).toBe(true);
  });

  it("hold between the lowest note and the bass below it, where it is not an octave", () => {
    // D. Lowell and K. Pullig, Arranging for Large Jazz Ensemble (2003): the assumed root counts.
    expect(isBottomTooLow(midi("Eb2"), f13)).toBe(true);
    expect(isBottomTooLow(midi("F2"), f13)).toBe(false);
    // E♭3 over F2: a minor seventh on its limit.
    expect(isBottomTooLow(midi("Eb3"), f13)).toBe(false);
    // C2 over F1: a fifth five semitones under B♭1.
    expect(isBottomTooLow(midi("C2"), f13)).toBe(true);
  });
});

describe("the foundation (H8, H9)", () => {
  it("has only bass note, root and fifth below D3", () => {
    // C. Israels, Exploring Jazz Arranging, lesson 15.
    expect(["F2", "C3", "A2", "Eb3", "Db3"].map((note) => isLowColour(midi(note), f13))).toEqual([
      false,
      false,
      true,
      false,
      true,
    ]);
    const slash = harmonyOf(ask("Cmaj7/E", "G4", "f"));
    expect(isLowColour(midi("E2"), slash)).toBe(false);
    expect(isFirmBottom(midi("E2"), slash)).toBe(true);
    expect(isFirmBottom(midi("B2"), slash)).toBe(false);
  });

  it("lets neighbours lie an octave apart, and a twelfth over a firm lowest note", () => {
    expect(widestGapOver(midi("F2"), true, 6, f13)).toBe(19);
    expect(widestGapOver(midi("C3"), true, 6, f13)).toBe(19);
    expect(widestGapOver(midi("A3"), true, 6, f13)).toBe(12);
    expect(widestGapOver(midi("A3"), true, 3, f13)).toBe(19);
    expect(widestGapOver(midi("F2"), false, 6, f13)).toBe(12);
  });
});

describe("what a player may be given (H3)", () => {
  const trumpet = makePlayer({ seat: "tpt2" });
  const question = ask("F13", "D5", "f");
  const free = { ...question, rules: { ...question.rules, H3: false } };

  it("is the personal range, or with the rule off the compass of the instrument", () => {
    // B♭ trumpet, written F♯3 lowest: sounding E3 (52).
    expect(mayPlay(trumpet, midi("E3"), question)).toBe(true);
    expect(mayPlay(trumpet, midi("Eb3"), free)).toBe(false);
    const cut = { ...trumpet, range: { low: midi("C4"), high: midi("C5") } };
    expect(mayPlay(cut, midi("D5"), question)).toBe(false);
    expect(mayPlay(cut, midi("D5"), free)).toBe(true);
  });

  it("costs ever more above the highest zone, where only a lifted rule leads", () => {
    const costs = ["Bb5", "B5", "C6", "C#6"].map((note) =>
      registerCostOf(trumpet, midi(note), free),
    );
    expect(costs).toEqual([2, 6, 10, 14]);
  });
});
