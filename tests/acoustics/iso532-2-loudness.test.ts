import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { loudnessIso5322, specificLoudnessPattern } from "../../src/acoustics/iso532-2-loudness.ts";
import { raiseSpectrum } from "../../src/acoustics/spectrum.ts";
import type { Db } from "../../src/base/index.ts";
import { plainNote, randomNotes, sine } from "./support/sounds.ts";

const NOTES = randomNotes(24, 11);
const some = fc.uniqueArray(fc.integer({ min: 0, max: NOTES.length - 1 }), {
  minLength: 1,
  maxLength: 6,
});
const together = (indices: readonly number[]) => indices.flatMap((index) => NOTES[index]!);

describe("loudness", () => {
  it("never falls when the sound grows louder", () => {
    fc.assert(
      fc.property(some, fc.double({ min: 0.1, max: 20, noNaN: true }), (indices, by) => {
        const sound = together(indices);
        expect(loudnessIso5322(raiseSpectrum(sound, by as Db))).toBeGreaterThan(
          loudnessIso5322(sound),
        );
      }),
      { seed: 7, numRuns: 25 },
    );
  });

  it("never falls when a player joins", () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 0, max: NOTES.length - 1 }), (indices, joining) => {
        const before = loudnessIso5322(together(indices));
        expect(loudnessIso5322([...together(indices), ...NOTES[joining]!])).toBeGreaterThanOrEqual(
          before * (1 - 1e-12),
        );
      }),
      { seed: 7, numRuns: 25 },
    );
  });

  it("is the same to the last bit whatever the order of the players", () => {
    fc.assert(
      fc.property(some, (indices) => {
        const backwards = [...together(indices)].reverse();
        expect(loudnessIso5322(backwards)).toBe(loudnessIso5322(together(indices)));
      }),
      { seed: 7, numRuns: 10 },
    );
  });

  it("of nothing is nothing", () => expect(loudnessIso5322([])).toBe(0));

  it("refuses what is no partial", () => {
    expect(() => loudnessIso5322([sine(-1, 60)])).toThrow(RangeError);
  });

  // Figures of an independent implementation at equal total level of 70 dB: C2 11.2, C4 23.8 sone;
  // two independent equal sounds are 1.17 to 1.20 times as loud as one.
  it("grows with register and far less than in proportion to the players", () => {
    expect(loudnessIso5322(plainNote(65.41, 70))).toBeCloseTo(11.2, 1);
    expect(loudnessIso5322(plainNote(261.63, 70))).toBeCloseTo(23.8, 1);
    const one = plainNote(261.63, 70);
    const growth = loudnessIso5322([...one, ...one]) / loudnessIso5322(one);
    expect(growth).toBeGreaterThan(1.17);
    expect(growth).toBeLessThan(1.2);
  });

  it("is made of a pattern over 372 channels", () => {
    const pattern = specificLoudnessPattern([sine(1000, 60)]);
    expect(pattern).toHaveLength(372);
    const sum = pattern.reduce((all, value) => all + value, 0) * 0.1;
    expect(loudnessIso5322([sine(1000, 60)])).toBeCloseTo(1.5 * sum, 12);
    expect(loudnessIso5322([sine(1000, 60)], { ears: "one" })).toBeCloseTo(sum, 12);
  });
});
