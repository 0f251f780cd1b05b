import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import {
  loudnessIso5321,
  loudnessOfThirdOctaves,
  sharpnessDin45692,
  soneToPhon5321,
} from "../../src/acoustics/index.ts";
import type { DbSpl, Sone } from "../../src/base/index.ts";
import { noise, sine } from "../acoustics/support/sounds.ts";

// ISO 532-1:2017, Annex B.2, signal 1, third-octave levels.
const SIGNAL_1 = [
  -60, -60, 78, 79, 89, 72, 80, 89, 75, 87, 85, 79, 86, 80, 71, 70, 72, 71, 72, 74, 69, 65, 67, 77,
  68, 58, 45, 30,
] as DbSpl[];

describe("stationary loudness by ISO 532-1", () => {
  it("of signal 1 of the standard is 83.296 sone within 0.1 %", () => {
    expect(Math.abs(loudnessOfThirdOctaves(SIGNAL_1).loudness / 83.296 - 1)).toBeLessThan(0.001);
  });

  // Annex B signals; the standard allows 5 % or 0.1 sone.
  it.each([
    [250, 80, 14.655],
    [1000, 60, 4.019],
    [4000, 40, 1.549],
    [1000, 40, 1],
  ])("of %i Hz at %i dB is %f sone within its tolerance", (hz, level, sone) => {
    const { loudness } = loudnessIso5321([sine(hz, level)]);
    expect(Math.abs(loudness - sone)).toBeLessThanOrEqual(Math.max(0.1, 0.05 * sone));
  });

  it("puts 4 sone at 60 phon and 1 sone at 40", () => {
    expect(soneToPhon5321(4 as Sone)).toBe(60);
    expect(soneToPhon5321(1 as Sone)).toBe(40);
  });
});

// Open data of the standard's Annex B, read in place.
const data = resolve(import.meta.dirname, "../../../shared/data/audio/loudness");
describe.skipIf(!existsSync(data))("specific loudness of signal 1 of ISO 532-1", () => {
  it("follows the standard's pattern at all 240 places", () => {
    const rows = readFileSync(resolve(data, "iso532_1_signal_1_specific_loudness.csv"), "utf8")
      .trim()
      .split("\n")
      .slice(1)
      .map((row) => Number(row.split(",")[1]));
    const { specific } = loudnessOfThirdOctaves(SIGNAL_1);
    expect(rows).toHaveLength(240);
    rows.forEach((value, index) => expect(Math.abs(specific[index]! - value)).toBeLessThan(0.001));
  });
});

/** The level at which a band of noise has a loudness. */
function bandOfLoudness(low: number, high: number, sone: number) {
  const at = (level: number) => noise(low, high, () => level - 10 * Math.log10(high - low));
  let [soft, loud] = [20, 100];
  while (loud - soft > 0.01) {
    const middle = (soft + loud) / 2;
    if (loudnessIso5321(at(middle)).loudness < sone) soft = middle;
    else loud = middle;
  }
  return at(loud);
}

// DIN 45692:2009: critical bands of noise at 4 sone; tolerance 5 % or 0.05 acum.
describe("sharpness by DIN 45692 of a critical band of noise", () => {
  it.each([
    [200, 300, 0.38],
    [300, 400, 0.49],
    [400, 510, 0.6],
    [510, 630, 0.71],
    [630, 770, 0.82],
    [770, 920, 0.93],
    [920, 1080, 1.0],
    [1080, 1270, 1.13],
    [1270, 1480, 1.26],
    [1480, 1720, 1.35],
    [1720, 2000, 1.49],
    [2000, 2320, 1.64],
    [2320, 2700, 1.78],
    [2700, 3150, 2.06],
    [3150, 3700, 2.4],
    [3700, 4400, 2.82],
    [4400, 5300, 3.48],
    [5300, 6400, 4.43],
    [6400, 7700, 5.52],
    [7700, 9500, 6.81],
    [9500, 12000, 8.55],
  ])("from %i to %i Hz is %f acum", (low, high, acum) => {
    const found = sharpnessDin45692(bandOfLoudness(low, high, 4));
    expect(Math.abs(found - acum)).toBeLessThanOrEqual(Math.max(0.05, 0.05 * acum));
  });
});
