import { describe, expect, it } from "vitest";
import { categories, categoryRows } from "../../../src/voicing/techniques/substitution-table.ts";

describe("the table of substitutions", () => {
  it.each(Object.entries(categoryRows))("gives each tone of %s one place only", (_family, row) => {
    const tones = categories.flatMap((category) => row[category]);
    expect(new Set(tones).size).toBe(tones.length);
    expect(tones.every((tone) => Number.isInteger(tone) && tone >= 0 && tone <= 11)).toBe(true);
  });
});
