import { describe, expect, it } from "vitest";
import type { Db, Seconds } from "../../src/base/index.ts";
import { NoteMaker, planVoicing } from "../../src/audio/index.ts";
import type { SoundPlan } from "../../src/audio/index.ts";
import { StageMixer } from "../../src/audio/stage-mixer.ts";
import { bigBand, fiveHorns, voicingOf } from "./support/band.ts";
import { bandPower, powerToDb, rms, spectrumOf, toDb } from "./support/fourier.ts";

const maker = new NoteMaker();
const planOf = (voicing = fiveHorns, seconds = 1): SoundPlan =>
  planVoicing(voicing, { dynamic: "mf", manner: "sustained", seconds: seconds as Seconds });

function mixed(plan: SoundPlan, isDry = false, gain = 0): [Float32Array, Float32Array] {
  const mixer = new StageMixer(plan, maker, { gain: gain as Db, isDry });
  const out: [Float32Array, Float32Array] = [
    new Float32Array(mixer.frames),
    new Float32Array(mixer.frames),
  ];
  mixer.render(...out);
  return out;
}
const power = ([left, right]: readonly [Float32Array, Float32Array]): number =>
  rms(left, 14400, 43200) ** 2 + rms(right, 14400, 43200) ** 2;

describe("the mix on the stage", () => {
  it("pans a player to the seat: power shared, none lost", () => {
    for (const id of ["tpt2", "alto1", "bari"]) {
      const voicing = voicingOf({ [id]: 60 });
      const [left, right] = mixed(planOf(voicing), true);
      const seat = planOf(voicing).seats[0]!;
      const balance = toDb(rms(right, 14400, 43200) / rms(left, 14400, 43200));
      expect(Math.sign(Math.round(balance * 10))).toBe(Math.sign(seat.pan) || 0);
      const middle = { ...planOf(voicing), seats: [{ ...seat, pan: 0 }] };
      expect(powerToDb(power([left, right]) / power(mixed(middle, true)))).toBeCloseTo(0, 3);
    }
  });

  it("keeps the balance of the timbre at every distance: the room adds no weight", () => {
    for (const distanceM of [2, 4.2]) {
      const plan = planOf(voicingOf({ tpt1: 67 }));
      const seats = [{ playerId: "tpt1", pan: 0, distanceM }];
      const level = powerToDb(power(mixed({ ...plan, seats })) / power(mixed(plan, true)));
      expect(Math.abs(level)).toBeLessThan(2.5);
    }
  });

  it("has left and right within 1 dB for a unison of equal players on mirrored seats", () => {
    const plan = planOf(voicingOf({ tpt1: 67, tpt2: 67, tpt3: 67, tpt4: 67 }), 3);
    const [left, right] = mixed(plan);
    expect(Math.abs(toDb(rms(left) / rms(right)))).toBeLessThan(1);
  });

  it("is mono-safe: no third-octave of the band loses more than 4 dB when both sides are added", () => {
    const keys = Object.fromEntries(bigBand().map(({ id }, n) => [id, 45 + ((n * 5) % 30)]));
    const [left, right] = mixed(planOf(voicingOf(keys), 2));
    const mid = left.map((x, i) => (x + right[i]!) / Math.SQRT2);
    const [l, r, m] = [left, right, mid].map((x) => spectrumOf(x, 48000, 9600, 65536)) as [
      ReturnType<typeof spectrumOf>,
      ReturnType<typeof spectrumOf>,
      ReturnType<typeof spectrumOf>,
    ];
    for (let hz = 125; hz < 8000; hz *= 2 ** (1 / 3)) {
      const [low, high] = [hz / 2 ** (1 / 6), hz * 2 ** (1 / 6)];
      const stereo = bandPower(l, low, high) + bandPower(r, low, high);
      expect(powerToDb(bandPower(m, low, high) / stereo), `${hz}`).toBeGreaterThan(-4);
    }
  });

  it("adds the players: the whole is the sum of each alone", () => {
    const whole = mixed(planOf(), true)[0];
    const sum = new Float32Array(whole.length);
    for (const { player, sounding } of fiveHorns.placements)
      mixed(planOf(voicingOf({ [player.id]: sounding })), true)[0].forEach((x, i) => {
        sum[i] = sum[i]! + x;
      });
    for (let i = 0; i < whole.length; i += 101) expect(sum[i]).toBeCloseTo(whole[i]!, 6);
  });

  it("obeys the gain", () => {
    const [soft, plain] = [mixed(planOf(), false, -6), mixed(planOf())];
    expect(powerToDb(power(soft) / power(plain))).toBeCloseTo(-6, 2);
  });

  it("scatters the players' onsets by some milliseconds, the same way every time", () => {
    const first = (id: string): number =>
      mixed(planOf(voicingOf({ [id]: 60 })), true)[0].findIndex((x) => Math.abs(x) > 1e-5);
    const onsets = ["tbn1", "tbn2", "tbn3"].map(first);
    expect(new Set(onsets).size).toBe(3);
    expect(Math.max(...onsets) - Math.min(...onsets)).toBeLessThan(0.03 * 48000);
    expect(["tbn1", "tbn2", "tbn3"].map(first)).toEqual(onsets);
  });
});
