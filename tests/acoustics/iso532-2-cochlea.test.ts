import { describe, expect, it } from "vitest";
import { ISO_532_2_EAR } from "../../src/acoustics/iso532-2-ear-table.ts";
import { cochlearInput, earTransfer } from "../../src/acoustics/iso532-2-cochlea.ts";
import type { Hertz } from "../../src/base/index.ts";
import { sine } from "./support/sounds.ts";

describe("the way to the cochlea", () => {
  it("has 39 ascending rows", () => {
    expect(ISO_532_2_EAR).toHaveLength(39);
    ISO_532_2_EAR.slice(1).forEach(([hz], index) =>
      expect(hz).toBeGreaterThan(ISO_532_2_EAR[index]![0]),
    );
  });

  // ISO 532-2:2017, table 1.
  it("gains what the table says at its rows and between them", () => {
    expect(earTransfer(2500 as Hertz, "free")).toBeCloseTo(16.8 - 10.4, 9);
    expect(earTransfer(2500 as Hertz, "diffuse")).toBeCloseTo(14.9 - 10.4, 9);
    expect(earTransfer(2500 as Hertz, "eardrum")).toBeCloseTo(-10.4, 9);
    expect(earTransfer(900 as Hertz, "free")).toBeCloseTo(0, 9);
  });

  it("leaves out what lies beyond 20 Hz and 20 kHz and what is silent", () => {
    const input = cochlearInput([
      sine(10, 90),
      sine(21000, 90),
      sine(500, -Infinity),
      sine(440, 60),
    ]);
    expect([...input.hz]).toEqual([440]);
  });

  it("gives the same input whatever the order of the partials", () => {
    const partials = [sine(880, 50), sine(440, 60), sine(440, 40)];
    expect(cochlearInput(partials)).toEqual(cochlearInput([...partials].reverse()));
  });
});
