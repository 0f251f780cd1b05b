import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  pitchClassProfile,
  rootAmbiguity,
  rootAnalysis,
  rootWeights,
} from "../../src/acoustics/parncutt-1988.ts";
import type { PitchClass, SoundingMidi } from "../../src/base/index.ts";

const chord = fc.uniqueArray(fc.integer({ min: 24, max: 96 }), { minLength: 1, maxLength: 7 });

describe("roots of a chord", () => {
  it("do not change when notes move by octaves or are doubled", () => {
    fc.assert(
      fc.property(chord, fc.nat(), (midi, pick) => {
        const moved = midi.map((note, index) => (index === pick % midi.length ? note + 12 : note));
        const doubled = [...moved, midi[0]!] as SoundingMidi[];
        expect(rootAnalysis(doubled)).toEqual(rootAnalysis(midi as SoundingMidi[]));
      }),
      { seed: 7 },
    );
  });

  it("move along when the chord is transposed", () => {
    fc.assert(
      fc.property(chord, fc.integer({ min: 1, max: 11 }), (midi, by) => {
        const here = rootAnalysis(midi as SoundingMidi[]).roots.map((root) => (root + by) % 12);
        const there = rootAnalysis(midi.map((note) => note + by) as SoundingMidi[]).roots;
        expect([...there].sort()).toEqual(here.sort());
      }),
      { seed: 7 },
    );
  });

  it("of no pitches are none", () => {
    expect(rootAnalysis([]).roots).toEqual([]);
    expect(rootAnalysis([]).ambiguity).toBe(0);
  });

  it("follow how much each class sounds", () => {
    const soft = pitchClassProfile([0, 4, 7] as PitchClass[]).map((value) => value / 2);
    expect([...rootWeights(soft)].map((weight) => weight * 2)).toEqual([
      18, 0, 3, 3, 10, 6, 2, 10, 3, 7, 1, 0,
    ]);
    expect(rootAmbiguity(rootWeights(soft))).toBeCloseTo(1.8708, 4);
  });

  it("are asked of whole-number pitches only", () => {
    expect(() => pitchClassProfile([60.5] as SoundingMidi[])).toThrow(/whole number, got 60.5/);
    expect(pitchClassProfile([-1] as PitchClass[])[11]).toBe(1);
  });
});
