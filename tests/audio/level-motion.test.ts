import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import type { Count, Seconds } from "../../src/base/index.ts";
import { LevelMotion, SHIMMER_DB } from "../../src/audio/level-motion.ts";
import { SlowWander } from "../../src/audio/slow-wander.ts";
import { RATE, renderedNote } from "./support/rendered-note.ts";
import { rms, toDb } from "./support/fourier.ts";

const step = (64 / 48000) as Seconds;
const decibels = (seed: Count, seconds = 4): readonly number[] => {
  const motion = new LevelMotion(seed, step);
  return Array.from({ length: Math.round(seconds / step) }, () => toDb(motion.next()));
};

describe("the level of a held note", () => {
  it("stays within half a decibel, and is not still", () => {
    for (const seed of [1, 2, 3, 4]) {
      const levels = decibels(seed);
      const strayed = Math.max(...levels.map(Math.abs));
      expect(strayed).toBeLessThan(0.5);
      expect(strayed).toBeGreaterThan(0.5 * SHIMMER_DB);
    }
  });

  it("moves slowly: under 0.01 dB in 1.3 ms, and not at all at the attack", () => {
    const levels = decibels(5);
    levels.slice(1).forEach((level, i) => expect(Math.abs(level - levels[i]!)).toBeLessThan(0.01));
    for (const level of levels.slice(0, 10)) expect(Math.abs(level)).toBeLessThan(0.01);
  });

  it("favours neither louder nor softer over many players", () => {
    const all = Array.from({ length: 200 }, (_, seed) => decibels(seed)).flat();
    expect(Math.abs(all.reduce((sum, level) => sum + level, 0) / all.length)).toBeLessThan(0.02);
  });

  it("is each player's own, and the same every time", () => {
    expect(decibels(7)).toEqual(decibels(7));
    expect(decibels(7)).not.toEqual(decibels(8));
  });

  it("is heard in the samples: a tenth of a second differs from the next, by less than 1 dB", () => {
    const note = renderedNote("tenor-sax", soundingMidi(60), "mf", { seconds: 3 });
    const levels = Array.from({ length: 24 }, (_, i) =>
      toDb(rms(note, (RATE / 10) * (4 + i), (RATE / 10) * (5 + i))),
    );
    const spread = Math.max(...levels) - Math.min(...levels);
    expect(spread).toBeGreaterThan(0.15);
    expect(spread).toBeLessThan(1);
  });
});

describe("a slow wander", () => {
  it("is the same whatever the seconds are cut into", () => {
    const at = (cut: number): number => {
      let draws = 0;
      const chance = (): number => ((draws += 1) * 0.37) % 1;
      const wander = new SlowWander(chance, 0.5 as Seconds, (1 / cut) as Seconds);
      let value = 0;
      for (let i = 0; i < 1.2 * cut; i++) value = wander.next();
      return value;
    };
    expect(at(1000)).toBeCloseTo(at(100), 6);
  });
});
