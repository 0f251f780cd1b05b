import { describe, expect, it } from "vitest";
import {
  centreOfCriticalBandwidthZwicker,
  criticalBandwidthZwicker,
} from "../../src/acoustics/critical-bandwidth-zwicker.ts";
import type { Hertz } from "../../src/base/index.ts";

describe("critical bandwidth after Zwicker", () => {
  it("goes there and back", () => {
    for (const hz of [100, 440, 1000, 8000] as Hertz[])
      expect(centreOfCriticalBandwidthZwicker(criticalBandwidthZwicker(hz)) / hz).toBeCloseTo(1, 9);
  });

  it("is never under 100 Hz", () => {
    expect(criticalBandwidthZwicker(1 as Hertz)).toBeGreaterThanOrEqual(100);
    expect(() => centreOfCriticalBandwidthZwicker(99 as Hertz)).toThrow(/at least 100 Hz/);
  });
});
