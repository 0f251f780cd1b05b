import { describe, expect, it } from "vitest";
import { phonToSpl2003, splToPhon2003 } from "../../src/acoustics/equal-loudness-2003.ts";
import { phonToSpl2023 } from "../../src/acoustics/equal-loudness-2023.ts";
import type { DbSpl, Hertz, Phon } from "../../src/base/index.ts";

describe("contours of 2003", () => {
  it("lie within half a decibel of those of 2023 at 40 phon", () => {
    for (const hz of [20, 63, 250, 1000, 4000, 8000] as Hertz[])
      expect(Math.abs(phonToSpl2003(40 as Phon, hz) - phonToSpl2023(40 as Phon, hz))).toBeLessThan(
        0.5,
      );
  });

  it("refuse a frequency that the standard does not give", () => {
    expect(() => splToPhon2003(60 as DbSpl, 440 as Hertz)).toThrow(RangeError);
  });
});
