import { describe, expect, it } from "vitest";
import { midiToHz, soundingMidi } from "../../src/base/index.ts";
import type { Db, Seconds } from "../../src/base/index.ts";
import { makePlayer } from "../../src/band/index.ts";
import type { Dynamic } from "../../src/band/index.ts";
import {
  MATCH_TARGET_LUFS,
  NoteMaker,
  integratedLoudness,
  levelMatchGain,
  planLoudness,
  planVoicing,
  renderPlan,
} from "../../src/audio/index.ts";
import type { Manner, PlanOptions } from "../../src/audio/index.ts";
import type { Voicing } from "../../src/voicing/index.ts";
import { bigBand, chordOf, fiveHorns, voicingOf } from "./support/band.ts";
import { bandPower, joined, powerToDb, rms, spectrumOf, toDb } from "./support/fourier.ts";

const maker = new NoteMaker();
const RATE = maker.sampleRate;
/** One of each section, no partial of one near the fundamental of another. */
const KEYS = { tenor1: 57, tbn1: 63, tpt1: 73 } as const;
const three = voicingOf(KEYS);

/** Both channels of the direct sound, before the limiter, one after the other's sum. */
function heard(manner: Manner, more: Partial<PlanOptions> = {}, voicing = three): Float32Array {
  const plan = planVoicing(voicing, { dynamic: "mf", seconds: 3 as Seconds, ...more, manner });
  const { left, right } = renderPlan(plan, { maker, isDry: true, isLimited: false });
  return left.map((sample, i) => sample + right[i]!);
}

/** Level of a player's fundamental over 85 ms from a time on, dB. */
function levelOf(id: keyof typeof KEYS, samples: Float32Array, at: number): number {
  const hz = midiToHz(soundingMidi(KEYS[id]));
  const spectrum = spectrumOf(samples, RATE, Math.round(at * RATE), 4096);
  return powerToDb(bandPower(spectrum, hz - 30, hz + 30));
}

const levelAt = (samples: Float32Array, at: number, seconds = 0.1): number =>
  toDb(rms(samples, Math.round(at * RATE), Math.round((at + seconds) * RATE)));
/** The stretch of a note that sounds, as the steady sound of the player has it. */
const isSounding = (id: keyof typeof KEYS, samples: Float32Array, at: number): boolean =>
  levelOf(id, samples, at) > levelOf(id, steady, 2) - 25;
const steady = heard("sustained");

describe("the ways to hear a voicing, measured on the sound", () => {
  it("a hit is over a tenth of a second after its quarter of a second", () => {
    const hit = heard("hit");
    expect(levelAt(hit, 0.1)).toBeGreaterThan(levelAt(steady, 0.1) - 1);
    const longer = joined(hit, new Float32Array(RATE));
    expect(levelAt(longer, 0.4, 0.3)).toBeLessThan(levelAt(hit, 0.1) - 60);
  });

  it("a sustained chord keeps its level and stops when it is told to", () => {
    const levels = Array.from({ length: 12 }, (_, i) => levelAt(steady, 0.3 + 0.2 * i, 0.2));
    expect(Math.max(...levels) - Math.min(...levels)).toBeLessThan(2);
    const longer = joined(steady, new Float32Array(RATE));
    expect(levelAt(longer, 3.2, 0.3)).toBeLessThan(levels[0]! - 60);
  });

  it("a crescendo goes from p to ff, louder all the way and brighter with it", () => {
    const grown = heard("crescendo");
    const levels = Array.from({ length: 8 }, (_, i) => levelAt(grown, 0.3 + 0.3 * i, 0.3));
    levels.slice(1).forEach((level, i) => expect(level).toBeGreaterThan(levels[i]!));
    const soft = heard("sustained", { dynamic: "p" });
    const loud = heard("sustained", { dynamic: "ff" });
    expect(Math.abs(levelAt(grown, 0.1) - levelAt(soft, 0.1))).toBeLessThan(2);
    expect(Math.abs(levelAt(grown, 2.7, 0.2) - levelAt(loud, 2.7, 0.2))).toBeLessThan(1);
    const highShare = (at: number): number => {
      const spectrum = spectrumOf(grown, RATE, Math.round(at * RATE), 2 ** 13);
      return powerToDb(bandPower(spectrum, 2000, 12000) / bandPower(spectrum, 50, 12000));
    };
    expect(highShare(2.7)).toBeGreaterThan(highShare(0.2) + 6);
  });

  it.each([
    ["rolled-from-bottom", ["tenor1", "tbn1", "tpt1"]],
    ["rolled-from-top", ["tpt1", "tbn1", "tenor1"]],
  ] as const)("%s lets note after note come in and stay", (manner, order) => {
    const rolled = heard(manner);
    // A step is 0.16 s: each window lies late in one, when its note has spoken.
    [0.07, 0.23, 0.39].forEach((at, step) =>
      order.forEach((id, place) =>
        expect([id, isSounding(id, rolled, at)]).toEqual([id, place <= step]),
      ),
    );
    for (const id of order) expect(isSounding(id, rolled, 2.8)).toBe(true);
  });

  it("section by section has saxes, trombones, trumpets alone, then everybody", () => {
    const parted = heard("section-by-section");
    const sounding = [0, 1, 2, 3].map((slot) =>
      (["tenor1", "tbn1", "tpt1"] as const).filter((id) =>
        isSounding(id, parted, 0.75 * slot + 0.3),
      ),
    );
    expect(sounding).toEqual([["tenor1"], ["tbn1"], ["tpt1"], ["tenor1", "tbn1", "tpt1"]]);
  });
});

describe("who is heard, measured on the sound", () => {
  const change = (id: keyof typeof KEYS, more: Partial<PlanOptions>): number =>
    levelOf(id, heard("sustained", more), 2) - levelOf(id, steady, 2);

  it("one player stands out: the others are 12 dB softer, or as asked, and the one is as before", () => {
    const solo = { soloPlayerIds: ["tbn1"] };
    expect(change("tbn1", solo)).toBeCloseTo(0, 1);
    expect(change("tpt1", solo)).toBeCloseTo(-12, 1);
    expect(change("tenor1", solo)).toBeCloseTo(-12, 1);
    expect(change("tpt1", { ...solo, othersDb: -20 as Db })).toBeCloseTo(-20, 1);
  });

  it("any of them are heard alone, just as they sound in the whole", () => {
    const alone = { soloPlayerIds: ["tbn1", "tenor1"], othersDb: "silent" } as const;
    expect(change("tbn1", alone)).toBeCloseTo(0, 1);
    expect(change("tenor1", alone)).toBeCloseTo(0, 1);
    expect(change("tpt1", alone)).toBeLessThan(-40);
    const rest = heard("sustained", { soloPlayerIds: ["tpt1"], othersDb: "silent" });
    const both = heard("sustained", alone);
    steady.forEach((sample, i) => {
      if (i % 997 === 0) expect((rest[i] ?? 0) + (both[i] ?? 0)).toBeCloseTo(sample, 6);
    });
  });

  /** What somebody adds to the horns: the sound is a sum before the limiter. */
  const added = (company: Partial<PlanOptions>): Float32Array => {
    const all = heard("sustained", { chord: chordOf("F13"), ...company });
    return all.map((sample, i) => sample - (steady[i] ?? 0));
  };
  const bandDb = (samples: Float32Array, low: number, high: number): number =>
    powerToDb(bandPower(spectrumOf(samples, RATE, Math.round(0.1 * RATE), 2 ** 15), low, high));

  it("the bass adds the root at the bottom of its compass, and only when asked", () => {
    const bass = added({ withBass: true });
    // F1 is 43.65 Hz.
    expect(bandDb(bass, 40, 48)).toBeGreaterThan(-70);
    expect(bandDb(bass, 40, 180)).toBeGreaterThan(bandDb(bass, 1000, 12000) + 20);
    expect(rms(added({}))).toBe(0);
  });

  it("the piano adds third, seventh and a tension; the drums add metal", () => {
    const piano = added({ withPiano: true });
    // A3, E flat 4 and the ninth, G3.
    for (const key of [57, 63, 55]) {
      const hz = midiToHz(soundingMidi(key));
      const beside = bandDb(piano, hz * 1.02, hz * 1.035);
      expect(bandDb(piano, hz * 0.99, hz * 1.01)).toBeGreaterThan(beside + 20);
    }
    const drums = added({ withDrums: true });
    expect(bandDb(drums, 4000, 14000)).toBeGreaterThan(bandDb(drums, 40, 1000) + 10);
  });

  it("bass, piano and drums step back with the others when somebody stands out", () => {
    const all = { withBass: true, withPiano: true, withDrums: true, chord: chordOf("F13") };
    const full = heard("sustained", all);
    const solo = heard("sustained", { ...all, soloPlayerIds: ["tpt1"] });
    const low = (samples: Float32Array): number => bandDb(samples, 40, 48);
    expect(low(solo) - low(full)).toBeCloseTo(-12, 0);
  });
});

// ITU-R BS.1770, gated integrated loudness of the three-second sustained render, limiter included.
describe("level-matching", () => {
  const flute: Voicing = {
    placements: [{ player: makePlayer({ seat: "fl1" }), sounding: soundingMidi(67) }],
  };
  const band: Voicing = {
    placements: bigBand().map((player) => ({ player, sounding: player.home.high })),
  };
  const low = voicingOf({ btbn: 36, tbn3: 40, tbn2: 46, tbn1: 50 });

  it.each([
    ["one flute at pp", flute, "pp", {}],
    ["five horns at mf", fiveHorns, "mf", {}],
    ["thirteen horns at fff", band, "fff", {}],
    ["four low trombones at f", low, "f", {}],
    [
      "five horns at ff with the rhythm section",
      fiveHorns,
      "ff",
      { withBass: true, withPiano: true, withDrums: true },
    ],
  ] as const)("brings %s within 0.2 LU of the target", (_, voicing, dynamic: Dynamic, company) => {
    const plan = planVoicing(voicing, {
      dynamic,
      manner: "sustained",
      seconds: 3 as Seconds,
      chord: chordOf("F13"),
      ...company,
    });
    const gain = levelMatchGain(planLoudness(plan, maker));
    const { left, right } = renderPlan(plan, { maker, gain });
    const loudness = integratedLoudness([left, right], RATE);
    expect(Math.abs(loudness - MATCH_TARGET_LUFS)).toBeLessThan(0.2);
  });

  it("changes nothing but the level", () => {
    const plan = planVoicing(three, { dynamic: "mf", manner: "sustained", seconds: 1 as Seconds });
    const plain = renderPlan(plan, { maker });
    const softer = renderPlan(plan, { maker, gain: -6 as Db });
    plain.left.forEach((sample, i) => {
      if (i % 499 === 0) expect(softer.left[i]).toBeCloseTo(10 ** (-6 / 20) * sample, 6);
    });
  });
});
