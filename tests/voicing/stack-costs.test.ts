import { describe, expect, it } from "vitest";
import { quantity, soundingMidi, type Semitones } from "../../src/base/index.ts";
import { gapCosts } from "../../src/voicing/gap-cost-table.ts";
import { harmonyOf } from "../../src/voicing/harmony.ts";
import { lowIntervalLimits } from "../../src/voicing/low-interval-table.ts";
import { marginalCost, sharedInSection, sharedNote } from "../../src/voicing/sharing-cost-table.ts";
import {
  anywhereCostOf,
  assumedBassUnder,
  bottomCostOf,
  copyCostOf,
  doubleNinthCost,
  gapCost,
  lowTensionCost,
  rootInsideCost,
  sharedInSectionCostOf,
  sharedNoteCostOf,
  tenorZoneCost,
  toneUnderLeadCost,
  underLimit,
} from "../../src/voicing/stack-costs.ts";
import { ask, midi } from "./support/questions.ts";

/**
 * Figures worked by hand from the cost tables of the search model (its sections 4 and 6): judgement
 * written down before the code, so that a change of a table is seen here first.
 */
const gap = (semitones: number): Semitones => quantity<Semitones>(semitones);
const f13 = harmonyOf(ask("F13", "D5", "f"));
const altered = harmonyOf(ask("C7alt", "Bb5", "f", { colour: "altered" }));

describe("the cost of a gap (S1)", () => {
  it.each([
    ["F2", 7, 0],
    ["F2", 12, 0],
    ["F2", 10, 3],
    ["F2", 16, 1],
    ["F2", 19, 3],
    ["F2", 5, 8],
    ["Bb2", 4, 5],
    ["Bb2", 6, 2],
    ["Bb2", 13, 2],
    ["C3", 3, 1],
    ["C3", 2, 4],
    ["C3", 1, 7],
    ["C3", 13, 5],
    ["A3", 9, 1],
    ["A3", 12, 3],
    ["C4", 6, 1],
    ["C4", 9, 3],
    ["C4", 12, 5],
    ["C4", 30, 8],
  ])("over %s, %i semitones wide, is %i", (lower, semitones, cost) => {
    expect(gapCost(midi(lower), gap(semitones), false)).toBe(cost);
  });

  it("lets semitones go free from G3 up in the cluster setting, and only those", () => {
    expect(gapCost(midi("G3"), gap(1), true)).toBe(0);
    expect(gapCost(midi("G3"), gap(2), true)).toBe(1);
    expect(gapCost(midi("F#3"), gap(1), true)).toBe(7);
  });

  it("comes from rows that cover every note once, each with a place where a gap is free", () => {
    for (let note = 0; note < 128; note++)
      expect(gapCosts.filter(({ low, high }) => low <= note && note <= high)).toHaveLength(1);
    for (const { costs } of gapCosts) expect(costs.slice(1)).toContain(0);
  });
});

describe("low-interval limits", () => {
  // Minor third C3, major third B♭2, fifth B♭1, tenth F♯2: G. Lindsay (2005), as carried by the
  // elm-music-theory library, commit cbf09f1.
  it.each([
    [3, "C3"],
    [4, "Bb2"],
    [7, "Bb1"],
    [1, "E3"],
  ])("stand where the published list has them: %i semitones over %s", (semitones, lower) => {
    expect(underLimit(midi(lower), gap(semitones))).toBe(0);
    expect(underLimit(soundingMidi(midi(lower) - 2), gap(semitones))).toBe(2);
  });

  it("leave unison, octave and everything over a tenth alone", () => {
    for (const semitones of [0, 12, 17, 24]) expect(underLimit(midi("C1"), gap(semitones))).toBe(0);
    expect(lowIntervalLimits.limits).toHaveLength(17);
  });
});

describe("costs of single notes", () => {
  it("charge a whole tone under the lead more the higher it lies (S3)", () => {
    expect(["C5", "Eb5", "Gb5", "C6"].map((lead) => toneUnderLeadCost(midi(lead), false))).toEqual([
      2, 3, 4, 6,
    ]);
    expect(toneUnderLeadCost(midi("F4"), false)).toBe(2);
    expect(toneUnderLeadCost(midi("C6"), true)).toBe(0);
  });

  it("keep the tenor zone for thirds and sevenths (S5)", () => {
    const inZone = (["R", "3", "5", "7", "T", "A"] as const).map((role) =>
      tenorZoneCost(midi("G3"), role),
    );
    expect(inZone).toEqual([2, 0, 1, 0, 1, 1]);
    expect([midi("B2"), midi("D4")].map((note) => tenorZoneCost(note, "R"))).toEqual([0, 0]);
  });

  it("charge tensions below B♭3 by the whole tone (S6)", () => {
    expect(["A3", "G3", "Gb3", "D3"].map((note) => lowTensionCost(midi(note), "T"))).toEqual([
      1, 2, 2, 4,
    ]);
    expect(lowTensionCost(midi("Bb3"), "A")).toBe(0);
    expect(lowTensionCost(midi("D3"), "5")).toBe(0);
  });

  it("charge the root inside from D4 up, unless the melody is the root (S7)", () => {
    expect(rootInsideCost(midi("F4"), f13)).toBe(1);
    expect(rootInsideCost(midi("F3"), f13)).toBe(0);
    expect(rootInsideCost(midi("G4"), f13)).toBe(0);
    expect(rootInsideCost(midi("F4"), harmonyOf(ask("F13", "F5", "f")))).toBe(0);
  });

  it("charge two octaves and a semitone under the lead (S9), but never the lead itself", () => {
    expect(doubleNinthCost(midi("C#3"), midi("D5"))).toBe(2);
    expect(doubleNinthCost(midi("D3"), midi("D5"))).toBe(0);
    expect(anywhereCostOf(midi("D5"), f13)).toBe(0);
    // The ninth on G3: three semitones under B♭3, begun whole tones counted.
    expect(anywhereCostOf(midi("G3"), f13)).toBe(2);
  });
});

describe("costs of the lowest note (S8)", () => {
  it("are nothing for the bass, and rise by what else is there", () => {
    expect(bottomCostOf(midi("F2"), f13)).toBe(0);
    expect(bottomCostOf(midi("C3"), f13)).toBe(2);
    expect(bottomCostOf(midi("A3"), f13)).toBe(3);
    expect(bottomCostOf(midi("Eb3"), f13)).toBe(3);
    expect(bottomCostOf(midi("G3"), f13)).toBe(9);
    expect(bottomCostOf(midi("D4"), f13)).toBe(4);
  });

  it("count the bass that sounds below it, by semitones under the limit", () => {
    // E♭2 over F1: a minor seventh, which may lie on F2 at lowest, twelve semitones up.
    expect(assumedBassUnder(midi("Eb2"), f13)).toBe(midi("F1"));
    expect(bottomCostOf(midi("Eb2"), f13)).toBe(3 + 2 * 12);
    expect(assumedBassUnder(midi("F2"), f13)).toBe(midi("F1"));
  });

  it("know the printed bass: the root under a slash chord costs, the third does not", () => {
    const slash = harmonyOf(ask("C/E", "C5", "f"));
    expect(bottomCostOf(midi("E3"), slash)).toBe(0);
    expect(bottomCostOf(midi("C4"), slash)).toBe(3);
    // C3 over E2: a minor sixth, one semitone under F2.
    expect(bottomCostOf(midi("C3"), slash)).toBe(3 + 2);
  });
});

describe("costs of copies in other octaves (S4)", () => {
  it("are small, and nothing for the lead's own tone", () => {
    expect(
      ["F3", "A3", "C4", "Eb4", "G4", "D4"].map((note) => copyCostOf(midi(note), f13)),
    ).toEqual([2, 1, 1, 1, 2, 0]);
  });

  it("are two for altered tones, for an altered lead and for the third as a slash bass", () => {
    expect(copyCostOf(midi("Ab4"), altered)).toBe(2);
    expect(copyCostOf(midi("Db4"), harmonyOf(ask("C7b9", "Db5", "f")))).toBe(2);
    expect(copyCostOf(midi("E3"), harmonyOf(ask("C/E", "C5", "f")))).toBe(2);
  });
});

describe("costs of sharing a note", () => {
  const steps = (note: string, harmony = f13): readonly number[] =>
    [0, 1, 2, 3, 4, 5].map((already) => sharedNoteCostOf(midi(note), already, harmony));

  it("want the lead doubled, let low notes have two, and rise everywhere (N1)", () => {
    expect(steps("D5")).toEqual([0, -1, 0, 1, 3, 5]);
    expect(steps("F2")).toEqual([0, 0, 4, 7, 10, 13]);
    expect(steps("A3")).toEqual([0, 1, 2, 3, 4, 5]);
    expect(steps("F3")).toEqual([0, 2, 3, 4, 5, 6]);
    expect(steps("Ab4", altered)).toEqual([0, 2, 3, 4, 5, 6]);
  });

  it("charge two more for each further player on a foreign lead", () => {
    expect(steps("C#5", harmonyOf(ask("F13", "C#5", "f")))).toEqual([0, 1, 2, 3, 5, 7]);
  });

  it("charge players of one section more than players of several (N2)", () => {
    const section = (note: string): readonly number[] =>
      [0, 1, 2, 3, 4].map((already) => sharedInSectionCostOf(midi(note), already, midi("D5")));
    expect(section("A3")).toEqual([0, 2, 4, 6, 8]);
    expect(section("D5")).toEqual([0, 1, 4, 6, 8]);
  });

  it("rise all the way in every row: what keeps the search exact", () => {
    const rows = [
      sharedNote.lead,
      sharedNote.low,
      sharedNote.other,
      sharedInSection.lead,
      sharedInSection.other,
    ];
    for (const row of rows) {
      const costs = Array.from({ length: 24 }, (_, already) => marginalCost(row, already));
      // The first player is free; from the second on no step is below the one before.
      expect(costs[0]).toBe(0);
      expect(costs.slice(1)).toEqual(costs.slice(1).sort((a, b) => a - b));
    }
  });
});
