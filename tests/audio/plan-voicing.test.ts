import { describe, expect, it } from "vitest";
import type { Db, Seconds } from "../../src/base/index.ts";
import { planVoicing } from "../../src/audio/index.ts";
import type { PlanOptions } from "../../src/audio/index.ts";
import { chordOf, fiveHorns } from "./support/band.ts";

const options: PlanOptions = { dynamic: "mf", manner: "sustained", seconds: 3 as Seconds };

describe("the plan of a voicing", () => {
  it("gives every placement its note, and every player one seat", () => {
    const plan = planVoicing(fiveHorns, options);
    expect(plan.events.map(({ playerId }) => playerId)).toEqual(
      fiveHorns.placements.map(({ player }) => player.id),
    );
    expect(plan.seats.map(({ playerId }) => playerId)).toEqual(
      plan.events.map(({ playerId }) => playerId),
    );
    for (const { trim, curve } of plan.events) {
      expect(trim).toBe(0);
      expect(curve).toEqual([{ at: 0, dynamic: "mf" }]);
    }
  });

  it("is plain data that survives being posted", () => {
    const plan = planVoicing(fiveHorns, { ...options, withDrums: true });
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
  });

  it("lets some stand out: the others 12 dB under, or as asked, or silent", () => {
    const solo = { ...options, soloPlayerIds: ["alto1"] };
    const trims = (more: Partial<PlanOptions>) =>
      Object.fromEntries(
        planVoicing(fiveHorns, { ...solo, ...more }).events.map(({ playerId, trim }) => [
          playerId,
          trim,
        ]),
      );
    expect(trims({})).toEqual({ tpt1: -12, tbn1: -12, alto1: 0, tenor1: -12, bari: -12 });
    expect(trims({ othersDb: -6 as Db })["bari"]).toBe(-6);
    expect(trims({ othersDb: "silent" })).toEqual({ alto1: 0 });
    expect(trims({ soloPlayerIds: [] })["bari"]).toBe(0);
  });

  it("adds bass, piano and drums when asked, and bass and piano only with a chord", () => {
    const who = (more: Partial<PlanOptions>) => [
      ...new Set(planVoicing(fiveHorns, { ...options, ...more }).events.map((e) => e.playerId)),
    ];
    const all = { withBass: true, withPiano: true, withDrums: true };
    expect(who({ ...all, chord: chordOf("F13") }).sort()).toEqual(
      ["alto1", "bari", "bass", "drums", "piano", "tbn1", "tenor1", "tpt1"].sort(),
    );
    expect(who(all)).not.toContain("bass");
    expect(who({ chord: chordOf("F13") })).not.toContain("bass");
  });

  it("moves a chair where the user wants it", () => {
    const seat = { playerId: "tpt1", pan: 0.9, distanceM: 1 };
    const plan = planVoicing(fiveHorns, { ...options, seats: [seat] });
    expect(plan.seats.find(({ playerId }) => playerId === "tpt1")).toEqual(seat);
  });

  it("of nobody is empty, and of no time is refused", () => {
    const empty = planVoicing({ placements: [] }, { ...options, withDrums: true });
    expect(empty.events).toEqual([]);
    expect(() => planVoicing(fiveHorns, { ...options, seconds: 0 as Seconds })).toThrow(
      "more than 0 seconds, got 0",
    );
  });
});
