import { describe, expect, it } from "vitest";
import {
  analyseSonority,
  chromaticLevelsOfPitches,
  chromaticLevelsOfSpectrum,
  pitchCommonality,
} from "../../src/acoustics/parncutt-1994.ts";
import type { SoundingMidi } from "../../src/base/index.ts";
import { hzOf, sine } from "./support/sounds.ts";

const sonority = (midi: readonly number[]) =>
  analyseSonority(chromaticLevelsOfPitches(midi as SoundingMidi[]));

describe("saliences of pitches", () => {
  it("are greatest at a single note's fundamental", () => {
    const { salience } = sonority([60]);
    expect(salience.indexOf(Math.max(...salience))).toBe(60);
  });

  it("find the missing fundamental of a harmonic pattern", () => {
    const upper = [2, 3, 4, 5].map((harmonic) => sine(hzOf(48) * harmonic, 60));
    const { complex } = analyseSonority(chromaticLevelsOfSpectrum(upper));
    expect(complex.indexOf(Math.max(...complex))).toBe(48);
  });

  it("add up to the multiplicity", () => {
    const { salience, multiplicity } = sonority([60, 64, 67]);
    expect(salience.reduce((sum, value) => sum + value, 0)).toBeCloseTo(multiplicity, 9);
  });

  it("of silence are nothing", () => {
    const silent = sonority([]);
    expect(silent.multiplicity).toBe(0);
    expect(silent.complexSonorousness).toBe(0);
    expect(() => pitchCommonality(silent, sonority([60]))).toThrow(/got silence/);
  });

  it("have everything in common with themselves, and the same both ways round", () => {
    const [a, b] = [sonority([60, 64, 67]), sonority([59, 62, 67])];
    expect(pitchCommonality(a, a)).toBeCloseTo(1, 12);
    expect(pitchCommonality(a, b)).toBeCloseTo(pitchCommonality(b, a), 12);
  });
});

describe("chromatic levels", () => {
  it("of a spectrum take each partial to its nearest semitone and add by power", () => {
    const levels = chromaticLevelsOfSpectrum([sine(440, 60), sine(442, 60), sine(20000, 90)]);
    expect(levels[69]).toBeCloseTo(63.01, 2);
    expect(levels[68]).toBe(-Infinity);
    expect(levels).toHaveLength(121);
  });

  it("of a plain tone hold 11 harmonics falling with 1/n from 60 dB", () => {
    const levels = chromaticLevelsOfPitches([48] as SoundingMidi[]);
    expect(levels[48]).toBeCloseTo(60, 9);
    expect(levels[60]).toBeCloseTo(60 - 20 * Math.log10(2), 9);
    expect([...levels].filter((level) => level > -Infinity)).toHaveLength(11);
  });
});
