import { describe, expect, it } from "vitest";
import type { Seconds } from "../../src/base/index.ts";
import { curveOf, soundingTime, timedPlacements } from "../../src/audio/manners.ts";
import type { Manner } from "../../src/audio/index.ts";
import { fiveHorns, voicingOf } from "./support/band.ts";

const three = 3 as Seconds;
const timed = (manner: Manner, voicing = fiveHorns) =>
  timedPlacements(voicing.placements, manner, three);
const MANNERS: readonly Manner[] = [
  "hit",
  "sustained",
  "crescendo",
  "rolled-from-bottom",
  "rolled-from-top",
  "section-by-section",
];

describe("ways to hear a voicing", () => {
  it.each(MANNERS)("%s ends within the time asked for and lets every player sound", (manner) => {
    const notes = timed(manner);
    expect(new Set(notes.map(({ placement }) => placement.player.id)).size).toBe(5);
    for (const { onset, duration } of notes) {
      expect(onset + duration).toBeLessThanOrEqual(three + 1e-9);
      expect(duration).toBeGreaterThan(0);
    }
  });

  it("a hit is short, a sustained chord as long as asked", () => {
    expect(soundingTime("hit", three)).toBe(0.25);
    expect(soundingTime("hit", 0.1 as Seconds)).toBe(0.1);
    expect(soundingTime("sustained", three)).toBe(3);
  });

  it("a roll brings in pitch after pitch, unisons together, and holds all to one end", () => {
    const voicing = voicingOf({ tpt1: 74, alto1: 74, tbn1: 63, bari: 41 });
    const up = timed("rolled-from-bottom", voicing);
    expect(up.map(({ placement }) => placement.sounding)).toEqual([41, 63, 74, 74]);
    expect(up[2]!.onset).toBe(up[3]!.onset);
    expect(up[1]!.onset).toBeGreaterThan(up[0]!.onset);
    for (const { onset, duration } of up) expect(onset + duration).toBeCloseTo(3, 9);
    const down = timed("rolled-from-top", voicing);
    expect(down.map(({ placement }) => placement.sounding)).toEqual([74, 74, 63, 41]);
  });

  it("section by section lets each sound alone, then all", () => {
    const notes = timed("section-by-section");
    const at = (onset: number) =>
      notes.filter((note) => note.onset === onset).map(({ placement }) => placement.player.section);
    const onsets = [...new Set(notes.map(({ onset }) => onset))];
    expect(onsets).toHaveLength(4);
    for (const onset of onsets.slice(0, 3)) expect(new Set(at(onset)).size).toBe(1);
    expect(at(onsets[3]!)).toHaveLength(5);
  });

  it("section by section with one section is simply held", () => {
    const notes = timed("section-by-section", voicingOf({ alto1: 69, tenor1: 60 }));
    expect(notes).toHaveLength(2);
    expect(notes[0]!.duration).toBe(3);
  });

  it("only a crescendo changes its dynamic, from p to ff", () => {
    expect(curveOf("crescendo", "mf", three).map(({ dynamic }) => dynamic)).toEqual(["p", "ff"]);
    expect(curveOf("sustained", "mf", three)).toEqual([{ at: 0, dynamic: "mf" }]);
  });
});
