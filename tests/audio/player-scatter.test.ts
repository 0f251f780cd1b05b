import { describe, expect, it } from "vitest";
import {
  ONSET_SCATTER_SECONDS,
  PITCH_SCATTER_CENTS,
  onsetScatter,
  pitchScatter,
  seedFrom,
} from "../../src/audio/player-scatter.ts";

const seeds = Array.from({ length: 2000 }, (_, i) => seedFrom(`player ${i}`, 1));
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe("scatter between players", () => {
  it("keeps pitch within a few cents, mean nothing", () => {
    const cents = seeds.map(pitchScatter);
    expect(Math.max(...cents.map(Math.abs))).toBeLessThanOrEqual(PITCH_SCATTER_CENTS);
    expect(Math.abs(mean(cents))).toBeLessThan(0.2);
    expect(Math.sqrt(mean(cents.map((c) => c * c)))).toBeGreaterThan(1.5);
  });

  it("keeps a band of thirteen in tune within 3 cents on average", () => {
    for (let seed = 1; seed <= 50; seed++) {
      const band = Array.from({ length: 13 }, (_, i) => pitchScatter(seedFrom(`p${i}`, seed)));
      expect(Math.abs(mean(band))).toBeLessThan(3);
    }
  });

  it("lets nobody start before the plan", () => {
    const late = seeds.map(onsetScatter);
    expect(Math.min(...late)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...late)).toBeLessThanOrEqual(2 * ONSET_SCATTER_SECONDS);
    expect(mean(late)).toBeCloseTo(ONSET_SCATTER_SECONDS, 3);
  });

  it("depends on the seed alone", () => {
    expect(seedFrom("tpt1", 1)).toBe(seedFrom("tpt1", 1));
    expect(seedFrom("tpt1", 1)).not.toBe(seedFrom("tpt1", 2));
    expect(seedFrom("tpt1", 1)).not.toBe(seedFrom("tpt2", 1));
  });
});
