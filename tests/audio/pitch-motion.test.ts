import { describe, expect, it } from "vitest";
import type { Cents, Db, Hertz, Seconds } from "../../src/base/index.ts";
import { PitchMotion } from "../../src/audio/pitch-motion.ts";
import { pitchScatter } from "../../src/audio/player-scatter.ts";

const articulation = {
  attackSeconds: 0.03 as Seconds,
  releaseSeconds: 0.1 as Seconds,
  vibratoHz: 5 as Hertz,
  vibratoCents: 25 as Cents,
  vibratoDelaySeconds: 0.5 as Seconds,
  noiseDb: -40 as Db,
};
const step = (32 / 48000) as Seconds;

function centsOver(seconds: number, seed: number, extent = 25): readonly number[] {
  const motion = new PitchMotion({ ...articulation, vibratoCents: extent as Cents }, seed, step);
  return Array.from({ length: Math.round(seconds / step) }, () => 1200 * Math.log2(motion.next()));
}

describe("pitch of a held note", () => {
  it("is nearly straight before the vibrato begins", () => {
    for (const seed of [1, 2, 3]) {
      const early = centsOver(0.35, seed);
      expect(Math.max(...early) - Math.min(...early)).toBeLessThan(2.5);
    }
  });

  it("then swings at the stated rate and extent, within what players differ", () => {
    const seed = 5;
    const late = centsOver(4, seed).slice(Math.round(1.2 / step));
    const middle = pitchScatter(seed);
    const extent = (Math.max(...late) - Math.min(...late)) / 2;
    expect(extent).toBeGreaterThan(25 * 0.8 - 1.3);
    expect(extent).toBeLessThan(25 * 1.2 + 1.3);
    const crossings = late.filter((c, i) => i > 0 && c > middle && late[i - 1]! <= middle).length;
    expect(crossings / (4 - 1.2)).toBeGreaterThan(5 * 0.9);
    expect(crossings / (4 - 1.2)).toBeLessThan(5 * 1.12);
  });

  it("swings around the player's own pitch, and wanders little", () => {
    const seed = 9;
    const straight = centsOver(6, seed, 0);
    const mean = straight.reduce((sum, c) => sum + c, 0) / straight.length;
    expect(Math.abs(mean - pitchScatter(seed))).toBeLessThan(0.6);
    expect(Math.max(...straight) - Math.min(...straight)).toBeLessThan(2.5);
  });

  it("is the same every time for a seed", () => expect(centsOver(1, 4)).toEqual(centsOver(1, 4)));
});
