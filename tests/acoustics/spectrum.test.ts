import { describe, expect, it } from "vitest";
import {
  ascending,
  checkSpectrum,
  harmonicSpectrum,
  mixSpectra,
  raiseSpectrum,
  spectrumAmplitudes,
  spectrumLevel,
} from "../../src/acoustics/spectrum.ts";
import type { Db, DbSpl, Hertz } from "../../src/base/index.ts";
import { plainNote, sine } from "./support/sounds.ts";

describe("a spectrum", () => {
  it("is refused with a partial at no frequency or no level", () => {
    expect(() => checkSpectrum([sine(0, 60)])).toThrow(/above 0 Hz, got 0/);
    expect(() => checkSpectrum([sine(NaN, 60)])).toThrow(RangeError);
    expect(() => checkSpectrum([sine(440, NaN)])).toThrow(/number of dB/);
  });

  it("may hold silent partials", () => {
    expect(spectrumLevel([sine(440, -Infinity), sine(880, 50)])).toBe(50);
  });

  it("made of harmonics has the level asked for", () => {
    expect(spectrumLevel(plainNote(261.63, 70))).toBeCloseTo(70, 9);
    expect(plainNote(100, 70)[4]!.hz).toBe(500);
  });

  it("cannot be made without a harmonic", () => {
    const recipe = { fundamental: 100 as Hertz, level: 60 as DbSpl, amplitude: () => 1 };
    expect(() => harmonicSpectrum({ ...recipe, harmonics: 0 })).toThrow(RangeError);
  });

  it("is raised without touching the one given", () => {
    const note = [sine(440, 60)];
    expect(raiseSpectrum(note, 6 as Db)).toEqual([sine(440, 66)]);
    expect(note).toEqual([sine(440, 60)]);
  });

  it("mixes with others, every partial kept", () => {
    expect(mixSpectra([[sine(1, 2)], [sine(1, 2), sine(3, 4)]])).toHaveLength(3);
  });

  it("is put in one order whatever order it came in", () => {
    const partials = [sine(3, 1), sine(1, 2), sine(1, 1)];
    expect(ascending(partials)).toEqual(ascending([...partials].reverse()));
    expect(partials[0]).toEqual(sine(3, 1));
  });

  it("gives ascending pressures, twice as large for 6 dB", () => {
    const { hz, amplitude } = spectrumAmplitudes([sine(880, 6.0206), sine(440, 0)]);
    expect([...hz]).toEqual([440, 880]);
    expect(amplitude[0]).toBe(1);
    expect(amplitude[1]).toBeCloseTo(2, 4);
  });
});
