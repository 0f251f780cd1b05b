import { describe, expect, it } from "vitest";
import {
  criticalBandwidthHutchinson,
  criticalBandwidthZwicker,
  erbHz,
  hzToBarkTraunmueller,
  hzToErbNumber,
} from "../../src/acoustics/index.ts";
import type { Hertz } from "../../src/base/index.ts";

// Values of the published formulas: B. R. Glasberg and B. C. J. Moore 1990 (digits of ISO 532-2),
// E. Zwicker and E. Terhardt 1980, W. Hutchinson and L. Knopoff 1978, H. Traunmüller 1990.
const ROWS = [
  [50, 30.1, 100.2, 21.9, 1.83, 0.42],
  [65.4, 31.7, 100.3, 26.0, 2.33, 0.59],
  [100, 35.5, 100.7, 34.3, 3.36, 0.96],
  [130.8, 38.8, 101.2, 40.9, 4.19, 1.28],
  [200, 46.2, 102.9, 53.9, 5.83, 1.96],
  [261.6, 52.9, 104.9, 64.1, 7.07, 2.63],
  [440, 72.1, 113.5, 89.9, 9.95, 4.39],
  [500, 78.6, 117.3, 97.7, 10.75, 4.92],
  [1000, 132.4, 162.2, 153.3, 15.59, 8.53],
  [2000, 240.2, 300.8, 240.5, 21.12, 13.01],
  [4000, 455.8, 685.4, 377.5, 27.06, 17.46],
] as const;

describe("critical bandwidths and scales", () => {
  it.each(ROWS)("at %f Hz are as published", (hz, erb, zwicker, hutchinson, cam, bark) => {
    expect(erbHz(hz as Hertz)).toBeCloseTo(erb, 1);
    expect(Math.abs(criticalBandwidthZwicker(hz as Hertz) - zwicker)).toBeLessThanOrEqual(0.051);
    expect(criticalBandwidthHutchinson(hz as Hertz)).toBeCloseTo(hutchinson, 1);
    expect(Math.abs(hzToErbNumber(hz as Hertz) - cam)).toBeLessThanOrEqual(0.0101);
    expect(Math.abs(hzToBarkTraunmueller(hz as Hertz) - bark)).toBeLessThanOrEqual(0.0101);
  });

  // Reference values of an open implementation of Hutchinson and Knopoff (dycon).
  it("of Hutchinson and Knopoff between 400 and 440, and 400 and 380 Hz, are 87.225 and 83.123", () => {
    expect(criticalBandwidthHutchinson(420 as Hertz)).toBeCloseTo(87.225, 3);
    expect(criticalBandwidthHutchinson(390 as Hertz)).toBeCloseTo(83.123, 3);
  });
});
