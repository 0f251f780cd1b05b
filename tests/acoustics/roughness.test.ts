import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roughness, roughnessBetween, roughnessWithin } from "../../src/acoustics/roughness.ts";
import { HUTCHINSON_KNOPOFF } from "../../src/acoustics/roughness-hutchinson.ts";
import { SETHARES_MINIMUM, SETHARES_PRODUCT } from "../../src/acoustics/roughness-sethares.ts";
import { VASSILAKIS } from "../../src/acoustics/roughness-vassilakis.ts";
import { raiseSpectrum, spectrumAmplitudes } from "../../src/acoustics/spectrum.ts";
import type { Db } from "../../src/base/index.ts";
import { harmonics, hzOf, pressures, randomNotes } from "./support/sounds.ts";

const METHODS = [SETHARES_MINIMUM, SETHARES_PRODUCT, VASSILAKIS, HUTCHINSON_KNOPOFF];
const decay = (harmonic: number): number => 0.88 ** (harmonic - 1);
const dyad = (low: number, semitones: number) => [
  harmonics(hzOf(low), 6, decay),
  harmonics(hzOf(low + semitones), 6, decay),
];

describe.each(METHODS.map((method) => [method.label, method] as const))(
  "roughness: %s",
  (_label, method) => {
    it.each([3, 4, 5, 7])("of %i semitones falls with every octave upwards", (semitones) => {
      const values = [36, 48, 60, 72].map((low) => roughness(dyad(low, semitones), method).total);
      values.slice(1).forEach((value, index) => expect(value).toBeLessThan(values[index]!));
    });

    it("does not change with the level of the whole", () => {
      const notes = dyad(48, 4);
      const louder = notes.map((note) => raiseSpectrum(note, 20 as Db));
      expect(roughness(louder, method).total / roughness(notes, method).total).toBeCloseTo(1, 9);
    });

    it("does not depend on the order of notes or partials", () => {
      const notes = randomNotes(4, 5);
      const shuffled = [...notes].reverse().map((note) => [...note].reverse());
      const [straight, turned] = [roughness(notes, method), roughness(shuffled, method)];
      expect(turned.total / straight.total).toBeCloseTo(1, 12);
      expect(turned.between / straight.between).toBeCloseTo(1, 12);
    });

    it("is the sum of its shares and names every pair of notes", () => {
      const notes = randomNotes(4, 6);
      const found = roughness(notes, method);
      expect(found.pairs).toHaveLength(6);
      const pairs = found.pairs.reduce((sum, { value }) => sum + value, 0);
      expect(found.between).toBeCloseTo(pairs, 12);
      expect(found.total).toBeCloseTo(found.within + found.between, 12);
    });

    it("of nothing is nothing", () => expect(roughness([], method).total).toBe(0));
  },
);

describe("undivided roughness", () => {
  it("between two notes counts every pair once, equal frequencies as well", () => {
    const a = spectrumAmplitudes(pressures([100, 200], [1, 1]));
    const b = spectrumAmplitudes(pressures([100, 150], [1, 1]));
    const counted = { ...SETHARES_MINIMUM, pair: () => 1 };
    expect(roughnessBetween(a, b, counted)).toBe(4);
    expect(roughnessBetween(b, a, counted)).toBe(4);
    expect(roughnessWithin(a, counted)).toBe(1);
  });

  it("leaves nothing out by stopping where the curve of Hutchinson and Knopoff ends", () => {
    const endless = {
      id: "endless",
      label: "endless",
      source: "as Hutchinson and Knopoff, every pair visited",
      pair: HUTCHINSON_KNOPOFF.pair,
      divisor: HUTCHINSON_KNOPOFF.divisor,
    };
    const notes = randomNotes(12, 9);
    fc.assert(
      fc.property(fc.nat(11), fc.nat(11), (first, second) => {
        const pair = [notes[first]!, notes[second]!];
        const found = roughness(pair, HUTCHINSON_KNOPOFF);
        const full = roughness(pair, endless);
        expect(found.total).toBeCloseTo(full.total, 12);
      }),
      { seed: 7, numRuns: 40 },
    );
  });
});
