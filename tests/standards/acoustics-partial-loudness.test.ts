import { describe, expect, it } from "vitest";
import {
  detectionRatio,
  erbHz,
  loudnessIso5322,
  partialLoudness,
  type Spectrum,
} from "../../src/acoustics/index.ts";
import { channelGrowth } from "../../src/acoustics/iso532-2-specific-loudness.ts";
import { specificPartialLoudness } from "../../src/acoustics/mgb1997-partial-loudness.ts";
import {
  compressed,
  SPECIFIC_LOUDNESS_SCALE,
} from "../../src/acoustics/iso532-2-specific-loudness.ts";
import { maskedThreshold } from "../../src/acoustics/masked-threshold.ts";
import type { Hertz } from "../../src/base/index.ts";
import { noise, plainNote, sine } from "../acoustics/support/sounds.ts";

const C3 = 130.81;
const C4 = 261.63;
const D_FLAT_4 = 277.18;
const G4 = 392;

// Exact by the algebra of B. C. J. Moore, B. R. Glasberg and T. Baer 1997.
describe("partial loudness", () => {
  it("without a masker is the loudness in quiet", () => {
    for (const level of [10, 40, 70, 100]) {
      const note = plainNote(C4, level);
      expect(partialLoudness(note, []) / loudnessIso5322(note)).toBeCloseTo(1, 9);
    }
  });

  it.each([100, 400, 1000, 5000])("meets itself at the masked threshold at %i Hz", (hz) => {
    const growth = channelGrowth(hz as Hertz);
    for (const noiseLevel of [1, 1e3, 1e6]) {
      const least = maskedThreshold(hz as Hertz, noiseLevel, growth.threshold);
      const at = (signal: number) =>
        specificPartialLoudness(signal, noiseLevel, hz as Hertz, growth);
      const expected = SPECIFIC_LOUDNESS_SCALE * compressed(growth.threshold, growth);
      expect(at(least) / expected).toBeCloseTo(1, 6);
      expect(at(least * (1 - 1e-9)) / expected).toBeCloseTo(1, 6);
    }
  });

  it("implies a critical ratio of 18.2 dB at 1 kHz", () => {
    const ratio = 10 * Math.log10(erbHz(1000 as Hertz)) + detectionRatio(1000 as Hertz);
    expect(Math.abs(ratio - 18.2)).toBeLessThan(0.1);
  });

  it.each([
    [50, 13.5],
    [100, 4.9],
    [200, 0.4],
    [500, -2.3],
    [1000, -3.0],
    [8000, -3.0],
  ])("needs at %i Hz a signal %f dB over the noise in the filter", (hz, db) => {
    expect(detectionRatio(hz as Hertz)).toBeCloseTo(db, 1);
  });
});

// Figures of an independent implementation with the constants of ISO 532-2; not published.
describe("partial loudness as an independent implementation found it", () => {
  const masker = noise(500, 1500, () => 40);
  it.each([
    [60, 0.092],
    [65, 0.848],
    [70, 2.314],
    [80, 10.17],
    [55, 0.0017],
  ])("of 1 kHz at %i dB in noise from 500 to 1500 Hz is %f sone", (level, sone) => {
    expect(partialLoudness([sine(1000, level)], masker) / sone).toBeCloseTo(1, 1);
  });

  const notes: readonly (readonly [string, Spectrum, Spectrum, number])[] = [
    ["C4 over C3", plainNote(C4, 70), plainNote(C3, 70), 13.94],
    ["C3 under C4", plainNote(C3, 70), plainNote(C4, 70), 3.73],
    ["C4 over a louder C3", plainNote(C4, 70), plainNote(C3, 80), 5.64],
    ["C4 under G4", plainNote(C4, 70), plainNote(G4, 70), 6.89],
    ["G4 over C4", plainNote(G4, 70), plainNote(C4, 70), 11.37],
    ["C4 beside Db4", plainNote(C4, 70), plainNote(D_FLAT_4, 70), 5.94],
    ["C4 in unison", plainNote(C4, 70), plainNote(C4, 70), 6.02],
  ];
  it.each(notes)("of %s is right within 3 %%", (_name, signal, rest, sone) => {
    expect(Math.abs(partialLoudness(signal, rest) / sone - 1)).toBeLessThan(0.03);
  });
});

// Expected of the model, not proven by it.
describe("partial loudness of notes among notes", () => {
  it("is never more than the loudness alone", () => {
    for (const [signal, rest] of [
      [C4, C3],
      [C3, C4],
      [C4, G4],
      [C4, D_FLAT_4],
    ] as const)
      expect(partialLoudness(plainNote(signal, 70), plainNote(rest, 70))).toBeLessThan(
        loudnessIso5322(plainNote(signal, 70)),
      );
  });

  it("falls as the masker grows", () => {
    const heard = [50, 60, 70, 80, 90].map((level) =>
      partialLoudness(plainNote(C4, 70), plainNote(C3, level)),
    );
    heard.slice(1).forEach((value, index) => expect(value).toBeLessThan(heard[index]!));
  });
});
