import { describe, expect, it } from "vitest";
import type { dynamics } from "../../src/band/index.ts";
import { balanceUnits, lineUps, makePlayer, type SeatId } from "../../src/band/index.ts";

const units = (seat: SeatId, dynamic: (typeof dynamics)[number]): number =>
  balanceUnits(makePlayer({ seat }), dynamic);

// N. Rimsky-Korsakov, Principles of Orchestration (1922), on the comparison of resonance.
describe("balance after Rimsky-Korsakov", () => {
  it("makes one trumpet equal to one trombone, one tuba, two horns and four clarinets at f", () => {
    const trumpet = units("tpt2", "f");
    expect(units("tbn2", "f")).toBe(trumpet);
    expect(units("tuba1", "f")).toBe(trumpet);
    expect(2 * units("hn1", "f")).toBe(trumpet);
    expect(4 * units("cl1", "f")).toBe(trumpet);
    expect(2 * units("fl1", "f")).toBe(units("hn1", "f"));
  });

  it("makes all winds equal at p", () => {
    for (const seat of ["tpt1", "tbn1", "alto1", "bari", "fl1", "cl1", "hn1", "tuba1"] as const)
      expect(units(seat, "p")).toBe(1);
  });

  it("weighs four trumpets and four trombones 32 at f and 8 at p", () => {
    const brass = (lineUps[0]?.players ?? []).filter(({ section }) => section !== "saxes");
    const sum = (dynamic: "f" | "p"): number =>
      brass.reduce((total, player) => total + balanceUnits(player, dynamic), 0);
    expect(sum("f")).toBe(32);
    expect(sum("p")).toBe(8);
  });

  it("puts a saxophone between horn and trumpet, at 0.6 to 0.75 of a trumpet", () => {
    // Value from memory, needs an ear check.
    const share = units("alto1", "f") / units("tpt1", "f");
    expect(share).toBeGreaterThanOrEqual(0.6);
    expect(share).toBeLessThanOrEqual(0.75);
  });

  it("takes the proposed shares off for mutes and flugelhorn", () => {
    // Value from memory: cup 0.5, Harmon 0.35, flugelhorn 0.6 of an open trumpet.
    const trumpet = units("tpt1", "f");
    expect(balanceUnits(makePlayer({ seat: "tpt1", mute: "cup" }), "f")).toBeCloseTo(trumpet * 0.5);
    expect(balanceUnits(makePlayer({ seat: "tpt1", mute: "harmon" }), "f")).toBeCloseTo(
      trumpet * 0.35,
    );
    expect(units("flugel1", "f")).toBeCloseTo(trumpet * 0.6);
  });
});
