import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { kWeighting } from "../../src/audio/k-weighting.ts";
import type { Biquad } from "../../src/audio/k-weighting.ts";

// ITU-R BS.1770-5, annex 1, tables 1 and 2: coefficients at 48 kHz, as carried by open
// re-implementations (the Recommendation itself was not opened).
const SHELF: Biquad = {
  b0: 1.53512485958697,
  b1: -2.69169618940638,
  b2: 1.19839281085285,
  a1: -1.69065929318241,
  a2: 0.73248077421585,
};
const HIGH_PASS: Biquad = { b0: 1, b1: -2, b2: 1, a1: -1.99004745483398, a2: 0.99007225036621 };

function expectSection(found: Biquad, stated: Biquad): void {
  for (const name of ["b0", "b1", "b2", "a1", "a2"] as const)
    expect(found[name], name).toBeCloseTo(stated[name], 9);
}

function gainDb(sections: readonly Biquad[], hz: number, rate: number): number {
  const w = (2 * Math.PI * hz) / rate;
  const power = (c0: number, c1: number, c2: number): number =>
    (c0 + c1 * Math.cos(w) + c2 * Math.cos(2 * w)) ** 2 +
    (c1 * Math.sin(w) + c2 * Math.sin(2 * w)) ** 2;
  return sections.reduce(
    (sum, s) => sum + 10 * Math.log10(power(s.b0, s.b1, s.b2) / power(1, s.a1, s.a2)),
    0,
  );
}

describe("K-weighting", () => {
  it("has the published coefficients at 48 kHz", () => {
    const [shelf, highPass] = kWeighting(48000 as Hertz);
    expectSection(shelf, SHELF);
    expectSection(highPass, HIGH_PASS);
  });

  // Computed from the published coefficients; 997 Hz is where the offset −0.691 cancels.
  it.each([
    [20, -13.28],
    [100, -1.13],
    [500, 0.04],
    [997, 0.691],
    [2000, 3.07],
    [8000, 4.04],
  ])("changes %d Hz by %f dB", (hz, db) => {
    expect(gainDb(kWeighting(48000 as Hertz), hz, 48000)).toBeCloseTo(db, 2);
  });

  it("weights alike at other sampling rates", () => {
    for (const rate of [44100, 96000])
      for (const hz of [50, 200, 1000, 4000])
        expect(
          gainDb(kWeighting(rate as Hertz), hz, rate) - gainDb([SHELF, HIGH_PASS], hz, 48000),
        ).toBeCloseTo(0, 1);
  });
});

const file = resolve(
  import.meta.dirname,
  "../../../shared/data/audio/loudness/bs1770_k_weighting_48k.csv",
);
describe.skipIf(!existsSync(file))("the open table of K-weighting coefficients", () => {
  it("says what this meter uses", () => {
    const rows = readFileSync(file, "utf8").trim().split(/\r?\n/).slice(1);
    const sections = kWeighting(48000 as Hertz);
    rows.forEach((row, n) => {
      const [b0, b1, b2, a1, a2] = row.split(",").slice(1).map(Number);
      expectSection(sections[n]!, { b0: b0!, b1: b1!, b2: b2!, a1: a1!, a2: a2! });
    });
    expect(rows).toHaveLength(2);
  });
});
