import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import type { StaffStep } from "../../src/notation/index.ts";
import { headColumns, makeStaffNotes } from "../../src/notation/staff-notes.ts";
import { F13 } from "./support/voicings.ts";

const columns = (...steps: number[]) => headColumns(steps as StaffStep[]);

describe("heads of a chord on one staff (common practice, no single source)", () => {
  it("move the upper note of a second to the right", () => {
    expect(columns(0, 2, 3, 6)).toEqual([0, 0, 1, 0]);
  });

  it("alternate in a run of seconds", () => {
    expect(columns(0, 1, 2, 3)).toEqual([0, 1, 0, 1]);
  });

  it("stand side by side for two forms of one letter", () => {
    expect(columns(4, 4)).toEqual([0, 1]);
  });

  it("take a third column where two forms of one letter meet a neighbour", () => {
    expect(columns(4, 4, 5)).toEqual([0, 1, 2]);
  });

  it("never lie on each other", () => {
    const chords = fc.array(fc.integer({ min: -6, max: 14 }), { maxLength: 13 });
    fc.assert(
      fc.property(chords, (steps) => {
        const sorted = [...steps].sort((a, b) => a - b);
        const placed = columns(...sorted);
        sorted.forEach((step, high) =>
          sorted.slice(0, high).forEach((below, low) => {
            if (placed[high] === placed[low]) expect(step - below).toBeGreaterThan(1);
          }),
        );
      }),
      { seed: 7 },
    );
  });

  it("come out low to high with degree, name and ledger lines", () => {
    const seed = (letter: "A" | "F", octave: number, midi: number) => ({
      sounding: soundingMidi(midi),
      spelled: { letter, alteration: 0, octave },
      sign: "none" as const,
      players: [],
    });
    const notes = makeStaffNotes([seed("A", 5, 81), seed("F", 4, 65)], "treble", F13);
    expect(notes.map((note) => [note.name, note.degree, note.step, note.ledgerLines])).toEqual([
      ["F4", "1", 1, 0],
      ["A5", "3", 10, 1],
    ]);
  });
});
