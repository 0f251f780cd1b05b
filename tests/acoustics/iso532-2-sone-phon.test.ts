import { describe, expect, it } from "vitest";
import { SONE_BY_PHON } from "../../src/acoustics/iso532-2-sone-phon-table.ts";
import { phonToSone5322, soneToPhon5322 } from "../../src/acoustics/iso532-2-sone-phon.ts";
import type { Phon, Sone } from "../../src/base/index.ts";

describe("sones and phons", () => {
  it("rise together in the table", () => {
    SONE_BY_PHON.slice(1).forEach(([phon, sone], index) => {
      expect(phon).toBeGreaterThan(SONE_BY_PHON[index]![0]);
      expect(sone).toBeGreaterThan(SONE_BY_PHON[index]![1]);
    });
  });

  it("go there and back", () => {
    for (const phon of [3, 27, 44.4, 93] as Phon[])
      expect(soneToPhon5322(phonToSone5322(phon))).toBeCloseTo(phon, 9);
  });

  it("hold at the ends", () => {
    expect(soneToPhon5322(0 as Sone)).toBe(0);
    expect(soneToPhon5322(1000 as Sone)).toBe(120);
  });
});
