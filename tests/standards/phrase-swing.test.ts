import { describe, expect, it } from "vitest";
import type { QuartersPerMinute } from "../../src/theory/index.ts";
import { clockOf, feelOf, hornSwingRatio, rideSwingRatio } from "../../src/phrase/swing.ts";
import { at, melodyOf } from "../phrase/support/phrases.ts";

const tempo = (value: number) => value as QuartersPerMinute;

describe("swing ratio of the ride cymbal (Friberg & Sundström, Music Perception 19(3), 2002)", () => {
  // The short note keeps about 100 ms; up to 3.5 to 1 when slow, even when fast. The table is the
  // arithmetic of that rule.
  it.each([
    [120, 3.5],
    [133, 3.5],
    [150, 3],
    [160, 2.75],
    [180, 2.33],
    [200, 2],
    [220, 1.73],
    [240, 1.5],
    [260, 1.31],
    [280, 1.14],
    [300, 1],
    [320, 1],
    [400, 1],
  ])("at %i is %f", (bpm, ratio) => expect(rideSwingRatio(tempo(bpm))).toBeCloseTo(ratio, 2));

  it("leaves the short note 100 ms from 134 to 300", () => {
    for (let bpm = 134; bpm <= 300; bpm += 2) {
      const beat = 60 / bpm;
      expect(beat / (1 + rideSwingRatio(tempo(bpm)))).toBeCloseTo(0.1, 3);
    }
  });
});

describe("horns against the cymbal", () => {
  it("swing less than the cymbal and meet it at even eighths (Friberg & Sundström 2002; half: value from memory)", () => {
    for (let bpm = 60; bpm <= 400; bpm += 10) {
      const [horns, ride] = [hornSwingRatio(tempo(bpm)), rideSwingRatio(tempo(bpm))];
      expect(horns).toBeLessThanOrEqual(ride);
      expect(horns).toBeGreaterThanOrEqual(1);
    }
    expect(hornSwingRatio(tempo(200))).toBeCloseTo(1.5, 6);
  });

  it("come some 30 ms late on the beat near 150 and less when faster (Nelias et al. 2022)", () => {
    const delay = (bpm: number): number => {
      const melody = melodyOf("C5:4", { tempo: bpm });
      return clockOf(melody, feelOf("swing", melody.tempo)).horns(at(0));
    };
    expect(delay(150)).toBeGreaterThan(0.025);
    expect(delay(150)).toBeLessThan(0.04);
    for (let bpm = 150; bpm < 300; bpm += 10) expect(delay(bpm + 10)).toBeLessThan(delay(bpm));
    expect(delay(300)).toBeCloseTo(0, 9);
  });

  it("are together with it on upbeats (Friberg & Sundström 2002)", () => {
    const melody = melodyOf("C5:4", { tempo: 170 });
    const clock = clockOf(melody, feelOf("swing", melody.tempo));
    for (let beat = 0; beat < 4; beat++) {
      const upbeat = at((beat + 0.5) * melody.division);
      expect(clock.horns(upbeat)).toBeCloseTo(clock.rhythm(upbeat), 9);
    }
  });
});
