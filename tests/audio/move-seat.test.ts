import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Seconds } from "../../src/base/index.ts";
import {
  NoteMaker,
  SEAT_LIMITS,
  moveSeat,
  planVoicing,
  renderPlan,
  usualSeats,
} from "../../src/audio/index.ts";
import type { StageSeat } from "../../src/audio/index.ts";
import { bigBand, voicingOf } from "./support/band.ts";
import { rms, toDb } from "./support/fourier.ts";

const usual = usualSeats(bigBand());
const seatIn = (seats: readonly StageSeat[], id: string): StageSeat =>
  seats.find(({ playerId }) => playerId === id)!;

describe("moving a chair", () => {
  it("moves that one, by what is asked for only, and leaves the others and the old list", () => {
    const moved = moveSeat(usual, "tpt1", { pan: 0.9 });
    if (!moved.ok) throw new Error(moved.problem.message);
    expect(seatIn(moved.value, "tpt1")).toEqual({ ...seatIn(usual, "tpt1"), pan: 0.9 });
    const others = (seats: readonly StageSeat[]) =>
      seats.filter(({ playerId }) => playerId !== "tpt1");
    expect(others(moved.value)).toEqual(others(usual));
    expect(seatIn(usual, "tpt1").pan).toBe(-0.15);
  });

  it.each([
    ["tpt9", {}, "seat-player-unknown"],
    ["tpt1", { pan: 1.01 }, "seat-pan-out-of-range"],
    ["tpt1", { pan: NaN }, "seat-pan-out-of-range"],
    ["tpt1", { distanceM: 0.5 }, "seat-distance-out-of-range"],
    ["drums", { distanceM: 40 }, "seat-distance-out-of-range"],
  ])("of %s by %j is refused as %s", (playerId, change, code) => {
    const moved = moveSeat(usual, playerId, change);
    expect(!moved.ok && moved.problem.code).toBe(code);
    expect(!moved.ok && moved.problem.message).toMatch(/^[A-Z].*\.$/);
  });

  it("takes every place on the stage", () => {
    const [nearest, farthest] = SEAT_LIMITS.distanceM;
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: nearest, max: farthest, noNaN: true }),
        (pan, distanceM) => moveSeat(usual, "bari", { pan, distanceM }).ok,
      ),
      { seed: 7 },
    );
  });
});

describe("a moved chair as it sounds", () => {
  const voicing = voicingOf({ tbn1: 60 });
  const maker = new NoteMaker();
  const heard = (seat: Omit<StageSeat, "playerId">, isDry: boolean) =>
    renderPlan(
      planVoicing(voicing, {
        dynamic: "mf",
        manner: "sustained",
        seconds: 1 as Seconds,
        seats: [{ playerId: "tbn1", ...seat }],
      }),
      { maker, isDry },
    );

  it("is on the side where it stands, far left, middle and far right", () => {
    const tilt = (pan: number): number => {
      const { left, right } = heard({ pan, distanceM: 2 }, true);
      return toDb(rms(left) / rms(right));
    };
    expect(tilt(-0.8)).toBeGreaterThan(10);
    expect(tilt(0)).toBeCloseTo(0, 6);
    expect(tilt(0.8)).toBeCloseTo(-tilt(-0.8), 6);
  });

  it("is as loud wherever it stands: distance makes it roomier and later, not softer", () => {
    const power = (seat: Omit<StageSeat, "playerId">): number => {
      const { left, right } = heard(seat, false);
      return 10 * Math.log10(rms(left) ** 2 + rms(right) ** 2);
    };
    const near = power({ pan: 0, distanceM: 1 });
    for (const seat of [
      { pan: -1, distanceM: 1 },
      { pan: 0, distanceM: 4.2 },
      { pan: 0.5, distanceM: 9 },
    ])
      expect(Math.abs(power(seat) - near)).toBeLessThan(1.5);
    const start = (distanceM: number): number =>
      heard({ pan: 0, distanceM }, true).left.findIndex((sample) => Math.abs(sample) > 1e-4);
    // Sound goes 343 m a second in air of 20 °C.
    expect((start(9) - start(2)) / maker.sampleRate).toBeCloseTo(7 / 343, 4);
  });

  it("off the stage is a fault of the program", () => {
    expect(() => heard({ pan: 3, distanceM: 2 }, true)).toThrow("tbn1: A seat lies between");
  });
});
