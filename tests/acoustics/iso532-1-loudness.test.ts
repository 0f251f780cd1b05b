import { describe, expect, it } from "vitest";
import {
  loudnessIso5321,
  loudnessOfThirdOctaves,
  soneToPhon5321,
} from "../../src/acoustics/iso532-1-loudness.ts";
import {
  CRITICAL_BANDS,
  LOW_BAND_REDUCTIONS,
  THIRD_OCTAVE_CENTRES,
  UPPER_SLOPES,
} from "../../src/acoustics/iso532-1-table.ts";
import { loudnessIso5322 } from "../../src/acoustics/iso532-2-loudness.ts";
import type { DbSpl, Sone } from "../../src/base/index.ts";
import { plainNote, sine } from "./support/sounds.ts";

describe("the tables of Zwicker's method", () => {
  it("have their rows in order", () => {
    expect(THIRD_OCTAVE_CENTRES).toHaveLength(28);
    expect(CRITICAL_BANDS).toHaveLength(20);
    expect(UPPER_SLOPES).toHaveLength(18);
    UPPER_SLOPES.slice(1).forEach(([from], index) =>
      expect(from).toBeLessThan(UPPER_SLOPES[index]![0]),
    );
    CRITICAL_BANDS.slice(1).forEach(([, , , , upper], index) =>
      expect(upper).toBeGreaterThan(CRITICAL_BANDS[index]![4]),
    );
    for (const [, reductions] of LOW_BAND_REDUCTIONS) expect(reductions).toHaveLength(11);
  });
});

describe("loudness by Zwicker's method", () => {
  it("is the area under its pattern", () => {
    const { loudness, specific } = loudnessIso5321(plainNote(262, 70));
    const area = specific.reduce((sum, value) => sum + value * 0.1, 0);
    expect(area / loudness).toBeCloseTo(1, 1);
  });

  it("grows with level", () => {
    const values = [30, 50, 70, 90].map((level) => loudnessIso5321(plainNote(262, level)).loudness);
    values.slice(1).forEach((value, index) => expect(value).toBeGreaterThan(values[index]!));
  });

  it("agrees with Moore and Glasberg's within a third on a plain note", () => {
    for (const hz of [131, 262, 523]) {
      const ratio =
        loudnessIso5321(plainNote(hz, 70)).loudness / loudnessIso5322(plainNote(hz, 70));
      expect(Math.abs(Math.log(ratio))).toBeLessThan(Math.log(4 / 3));
    }
  });

  it("differs in a diffuse field", () => {
    const note = [sine(1000, 60)];
    expect(loudnessIso5321(note, "diffuse").loudness).not.toBeCloseTo(
      loudnessIso5321(note).loudness,
      2,
    );
  });

  it("needs 28 levels", () => {
    expect(() => loudnessOfThirdOctaves([60, 60] as DbSpl[])).toThrow(/28 .* got 2/);
  });

  it("of silence is nothing", () => expect(loudnessIso5321([]).loudness).toBe(0));

  it("has a loudness level without a jump at 1 sone", () => {
    expect(Math.abs(soneToPhon5321(0.9999 as Sone) - soneToPhon5321(1 as Sone))).toBeLessThan(0.05);
  });
});
