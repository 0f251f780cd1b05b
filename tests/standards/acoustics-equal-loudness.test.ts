import { describe, expect, it } from "vitest";
import {
  hearingThresholdIso226,
  hearingThresholdTerhardt,
  phonToSpl2003,
  phonToSpl2023,
  splToPhon2003,
  splToPhon2023,
} from "../../src/acoustics/index.ts";
import { EQUAL_LOUDNESS_2003 } from "../../src/acoustics/equal-loudness-2003-table.ts";
import { EQUAL_LOUDNESS_2023 } from "../../src/acoustics/equal-loudness-2023-table.ts";
import type { DbSpl, Hertz, Phon } from "../../src/base/index.ts";

const toSpl = (phon: number, hz: number) => phonToSpl2023(phon as Phon, hz as Hertz);
const toPhon = (level: number, hz: number) => splToPhon2023(level as DbSpl, hz as Hertz);

// ISO 226:2023, Annex B, tables B.1 and B.2, as an open re-implementation quotes them; tolerance of
// the printed rounding, 0.05 dB.
describe("equal-loudness contours of ISO 226:2023", () => {
  it.each([
    [20, 20, 89.5],
    [20, 12500, 33.0],
    [40, 20, 99.7],
    [40, 63, 73.0],
    [40, 250, 50.3],
    [40, 1000, 40.0],
    [40, 4000, 36.7],
    [40, 8000, 51.6],
    [60, 100, 78.5],
    [60, 500, 62.1],
    [60, 2000, 60.0],
    [80, 20, 118.9],
    [80, 12500, 85.6],
    [90, 20, 123.6],
    [90, 4000, 88.8],
  ])("put %i phon at %i Hz at %f dB", (phon, hz, level) => {
    expect(Math.abs(toSpl(phon, hz) - level)).toBeLessThanOrEqual(0.0501);
  });

  it.each([
    [60, 63, 21.6],
    [70, 400, 67.1],
    [80, 8000, 68.6],
    [90, 20, 20.8],
    [50, 3150, 53.9],
    [40, 1000, 40.0],
  ])("give %i dB at %i Hz, %f phon", (level, hz, phon) => {
    expect(Math.abs(toPhon(level, hz) - phon)).toBeLessThanOrEqual(0.0501);
  });

  it("come back to the same loudness level at all 29 frequencies", () => {
    for (const { hz } of EQUAL_LOUDNESS_2023)
      for (const phon of [20, 40, 60, 80]) expect(toPhon(toSpl(phon, hz), hz)).toBeCloseTo(phon, 9);
  });
});

describe("equal-loudness contours of ISO 226:2003", () => {
  // From the printed constants, which do not invert exactly (.03 to .05 phon).
  it.each([
    [20, 99.9],
    [100, 64.4],
    [1000, 40.0],
    [4000, 36.6],
    [12500, 51.5],
  ])("put 40 phon at %i Hz at %f dB", (hz, level) => {
    expect(Math.abs(phonToSpl2003(40 as Phon, hz as Hertz) - level)).toBeLessThanOrEqual(0.0501);
  });

  it("come back within 0.06 phon", () => {
    for (const { hz } of EQUAL_LOUDNESS_2003)
      for (const phon of [20, 40, 80] as Phon[]) {
        const back = splToPhon2003(phonToSpl2003(phon, hz), hz);
        expect(Math.abs(back - phon)).toBeLessThan(0.06);
      }
  });
});

describe("the threshold of hearing", () => {
  // E. Terhardt 1979, values of the formula.
  it.each([
    [100, 22.95],
    [250, 11.01],
    [500, 6.28],
    [1000, 3.37],
    [2000, -0.25],
    [4000, -3.39],
    [8000, 4.79],
  ])("after Terhardt at %i Hz is %f dB", (hz, level) => {
    expect(hearingThresholdTerhardt(hz as Hertz)).toBeCloseTo(level, 2);
  });

  // ISO 226:2023, table 1.
  it("after ISO 226 is 2.4 dB at 1 kHz and -6 dB at 3150 Hz", () => {
    expect(hearingThresholdIso226(1000 as Hertz)).toBe(2.4);
    expect(hearingThresholdIso226(3150 as Hertz)).toBe(-6);
  });
});
