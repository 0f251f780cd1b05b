import { describe, expect, it } from "vitest";
import { phonToSpl2023, splToPhon2023 } from "../../src/acoustics/equal-loudness-2023.ts";
import type { DbSpl, Hertz, Phon } from "../../src/base/index.ts";

describe("contours of 2023", () => {
  it("make 1 kHz its own measure", () => {
    for (const phon of [20, 40, 90] as Phon[])
      expect(phonToSpl2023(phon, 1000 as Hertz)).toBeCloseTo(phon, 1);
  });

  it("rise with loudness level at every frequency", () => {
    for (const hz of [20, 125, 3150, 12500] as Hertz[])
      expect(phonToSpl2023(60 as Phon, hz)).toBeGreaterThan(phonToSpl2023(40 as Phon, hz));
  });

  it("refuse a frequency that the standard does not give", () => {
    expect(() => splToPhon2023(60 as DbSpl, 440 as Hertz)).toThrow(RangeError);
  });
});
