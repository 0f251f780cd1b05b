import { describe, expect, it } from "vitest";
import {
  centreOfCriticalBandwidthHutchinson,
  criticalBandwidthHutchinson,
} from "../../src/acoustics/critical-bandwidth-hutchinson.ts";
import type { Hertz } from "../../src/base/index.ts";

describe("critical bandwidth after Hutchinson and Knopoff", () => {
  it("goes there and back", () => {
    for (const hz of [50, 440, 4000] as Hertz[])
      expect(centreOfCriticalBandwidthHutchinson(criticalBandwidthHutchinson(hz)) / hz).toBeCloseTo(
        1,
        12,
      );
  });

  it("widens in hertz and narrows in proportion towards the top", () => {
    const low = criticalBandwidthHutchinson(100 as Hertz);
    const high = criticalBandwidthHutchinson(1000 as Hertz);
    expect(high).toBeGreaterThan(low);
    expect(high / 1000).toBeLessThan(low / 100);
  });
});
