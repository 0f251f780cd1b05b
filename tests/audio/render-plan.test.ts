import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import type { Db, Seconds } from "../../src/base/index.ts";
import { lineUps } from "../../src/band/index.ts";
import type { Dynamic } from "../../src/band/index.ts";
import {
  BLOCK_FRAMES,
  CEILING_DB_TP,
  NoteMaker,
  integratedLoudness,
  levelMatchGain,
  planVoicing,
  renderBlocks,
  renderPlan,
  truePeak,
} from "../../src/audio/index.ts";
import type { Manner, SoundPlan } from "../../src/audio/index.ts";
import { clickLevel } from "./support/click-level.ts";
import { bigBand, chordOf, fiveHorns } from "./support/band.ts";
import { joined, peak, toDb } from "./support/fourier.ts";
import {
  ENGINE_TOLERANCE,
  REFERENCE_SAMPLES,
  referenceRender,
} from "./support/reference-render.ts";

const maker = new NoteMaker();
const RATE = maker.sampleRate;
const planOf = (manner: Manner = "sustained", dynamic: Dynamic = "mf", seconds = 0.5): SoundPlan =>
  planVoicing(fiveHorns, { dynamic, manner, seconds: seconds as Seconds });
const players = bigBand();

/** Thirteen horns on chance pitches of their own compass. */
const anyVoicing = fc
  .array(fc.integer({ min: 0, max: 1000 }), { minLength: 13, maxLength: 13 })
  .map((shares) => ({
    placements: players.map((player, i) => {
      const { low, high } = player.range;
      const sounding = soundingMidi(Math.round(low + ((high - low) * shares[i]!) / 1000));
      return { player, sounding };
    }),
  }));

describe("a rendered plan", () => {
  it("comes in blocks of 100 ms that join to the whole", () => {
    const blocks = [...renderBlocks(planOf(), { maker })];
    expect(blocks[0]!.left).toHaveLength(BLOCK_FRAMES);
    expect(BLOCK_FRAMES / RATE).toBe(0.1);
    let at = 0;
    for (const { from, left, right } of blocks) {
      expect(from).toBe(at);
      expect(right).toHaveLength(left.length);
      at += left.length;
    }
    expect(at).toBe(blocks[0]!.of);
    const whole = renderPlan(planOf(), { maker });
    expect(joined(...blocks.map(({ left }) => left))).toEqual(whole.left);
    expect(whole.isWhole).toBe(true);
  });

  it("can begin anywhere, and is from there on what it would have been", () => {
    const whole = renderPlan(planOf(), { maker });
    for (const from of [1, BLOCK_FRAMES, 2 * BLOCK_FRAMES + 1234]) {
      const blocks = [...renderBlocks(planOf(), { maker, from })];
      expect(blocks[0]!.from).toBe(from);
      expect(blocks[0]!.of).toBe(whole.left.length);
      expect(joined(...blocks.map(({ right }) => right))).toEqual(whole.right.subarray(from));
    }
    expect([...renderBlocks(planOf(), { maker, from: whole.left.length })]).toEqual([]);
  });

  it("is the same from a fresh maker as from a full cache, for one seed", () => {
    const again = renderPlan(planOf(), { maker: new NoteMaker() });
    expect(again.left).toEqual(renderPlan(planOf(), { maker }).left);
    const other = renderPlan({ ...planOf(), seed: 2 }, { maker });
    expect(other.left).not.toEqual(again.left);
  });

  it("gives the reference samples, which the browser's test compares with its own", () => {
    referenceRender().forEach((sample, i) =>
      expect(Math.abs(sample - REFERENCE_SAMPLES[i]!)).toBeLessThan(ENGINE_TOLERANCE),
    );
  });

  it("never passes −1 dBTP, whatever thirteen horns play at fff", () => {
    fc.assert(
      fc.property(anyVoicing, (voicing) => {
        const plan = planVoicing(voicing, {
          dynamic: "fff",
          manner: "hit",
          seconds: 0.2 as Seconds,
        });
        const { left, right } = renderPlan(plan, { maker: new NoteMaker() });
        expect(truePeak([left, right])).toBeLessThanOrEqual(CEILING_DB_TP);
        expect(peak(left)).toBeGreaterThan(0.05);
      }),
      { seed: 7, numRuns: 12 },
    );
  });

  it("never passes it either when turned up by 20 dB", () => {
    const { left, right } = renderPlan(planOf("crescendo", "ff", 1), { maker, gain: 20 as Db });
    expect(truePeak([left, right])).toBeLessThanOrEqual(CEILING_DB_TP);
  });

  it("needs the limiter only on peaks: thirteen horns at ff lose less than 3 LU", () => {
    const plan = planVoicing(
      { placements: players.map((player) => ({ player, sounding: player.home.high })) },
      { dynamic: "ff", manner: "sustained", seconds: 1 as Seconds },
    );
    const loudness = (isLimited: boolean): number => {
      const { left, right } = renderPlan(plan, { maker, isLimited });
      return integratedLoudness([left, right], RATE);
    };
    expect(loudness(false) - loudness(true)).toBeLessThan(3);
  });

  it("level-matches unlike voicings within 0.2 LU", () => {
    const plans = [planOf("sustained", "pp", 3), planOf("sustained", "f", 3)];
    for (const plan of plans) {
      const plain = renderPlan(plan, { maker });
      const gain = levelMatchGain(integratedLoudness([plain.left, plain.right], RATE));
      const matched = renderPlan(plan, { maker, gain });
      expect(Math.abs(integratedLoudness([matched.left, matched.right], RATE) + 20)).toBeLessThan(
        0.2,
      );
    }
  });

  it.each(["hit", "sustained", "crescendo", "rolled-from-bottom", "section-by-section"] as const)(
    "has no click louder than −60 dBFS in manner %s, even at fff",
    (manner) => {
      const { left, right } = renderPlan(planOf(manner, "fff", 0.8), { maker });
      expect(clickLevel(left, RATE)).toBeLessThan(-60);
      expect(clickLevel(right, RATE)).toBeLessThan(-60);
    },
  );

  it("can be watched and stopped", () => {
    const shares: number[] = [];
    const whole = renderPlan(planOf(), { maker, onProgress: (share) => shares.push(share) });
    expect(shares[shares.length - 1]).toBe(1);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    const part = renderPlan(planOf(), { maker, shouldStop: () => true });
    expect(part.isWhole).toBe(false);
    expect(part.left).toEqual(whole.left.subarray(0, BLOCK_FRAMES));
  });

  it("of nobody is empty", () => {
    const { left, isWhole } = renderPlan({ events: [], seats: [], seed: 1 }, { maker });
    expect(left).toHaveLength(0);
    expect(isWhole).toBe(true);
  });

  it("carries bass, piano and drums under the horns", () => {
    const plan = planVoicing(fiveHorns, {
      dynamic: "mf",
      manner: "sustained",
      seconds: 2 as Seconds,
      chord: chordOf("F13"),
      withBass: true,
      withPiano: true,
      withDrums: true,
    });
    const only = (test: (id: string) => boolean): number => {
      const events = plan.events.filter(({ playerId }) => test(playerId));
      const { left, right } = renderPlan({ ...plan, events }, { maker });
      return integratedLoudness([left, right], RATE);
    };
    const horns = only((id) => !["bass", "piano", "drums"].includes(id));
    for (const id of ["bass", "piano", "drums"]) {
      expect(only((other) => other === id)).toBeLessThan(horns - 5);
      expect(only((other) => other === id)).toBeGreaterThan(horns - 22);
    }
  });

  it("sounds every line-up on offer", () => {
    for (const { players: all } of lineUps) {
      const placements = all.map((player) => ({ player, sounding: player.home.low }));
      const plan = planVoicing(
        { placements },
        { dynamic: "mf", manner: "hit", seconds: 0.2 as Seconds },
      );
      const { left } = renderPlan(plan, { maker });
      expect(toDb(peak(left))).toBeGreaterThan(-50);
    }
  });
});
