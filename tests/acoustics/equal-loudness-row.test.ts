import { describe, expect, it } from "vitest";
import { EQUAL_LOUDNESS_2003 } from "../../src/acoustics/equal-loudness-2003-table.ts";
import { EQUAL_LOUDNESS_2023 } from "../../src/acoustics/equal-loudness-2023-table.ts";
import { equalLoudnessRow } from "../../src/acoustics/equal-loudness-row.ts";
import type { Hertz } from "../../src/base/index.ts";

describe.each([
  ["2003", EQUAL_LOUDNESS_2003],
  ["2023", EQUAL_LOUDNESS_2023],
])("the table of ISO 226:%s", (_edition, table) => {
  it("has 29 ascending third-octave frequencies with sane values", () => {
    expect(table).toHaveLength(29);
    table.forEach(({ hz, exponent, thresholdDbSpl }, index) => {
      if (index > 0) expect(hz).toBeGreaterThan(table[index - 1]!.hz);
      expect(exponent).toBeGreaterThan(0.2);
      expect(exponent).toBeLessThan(0.7);
      expect(thresholdDbSpl).toBeGreaterThan(-10);
    });
  });

  it("is frozen", () => expect(Object.isFrozen(table)).toBe(true));

  it("knows no frequency between its own", () => {
    expect(equalLoudnessRow(table, 1000 as Hertz).transferDb).toBe(0);
    expect(() => equalLoudnessRow(table, 1100 as Hertz)).toThrow(/29 third-octave .* got 1100/);
  });
});
