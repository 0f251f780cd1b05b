import { describe, expect, it } from "vitest";
import { accompanimentSeat, seatOf, usualSeats } from "../../src/audio/seating.ts";
import { seatProblem } from "../../src/audio/move-seat.ts";
import { bigBand } from "./support/band.ts";

const seats = new Map(bigBand().map((player) => [player.id, seatOf(player)]));
const inOrder = (...ids: readonly string[]): void => {
  const pans = ids.map((id) => seats.get(id)!.pan);
  expect(pans).toEqual([...pans].sort((a, b) => a - b));
  expect(new Set(pans).size).toBe(ids.length);
};

// Order from the director's left to right: E. MacDonald's big-band seating page and the guidance of
// the National Association for Music Education.
describe("the seating of a big band", () => {
  it("is tenor 1, alto 2, alto 1, tenor 2, baritone in front", () => {
    inOrder("tenor1", "alto2", "alto1", "tenor2", "bari");
  });

  it("is 2-1-3-bass for trombones and 2-1-3-4 for trumpets", () => {
    inOrder("tbn2", "tbn1", "tbn3", "btbn");
    inOrder("tpt2", "tpt1", "tpt3", "tpt4");
  });

  it("has saxes nearest, trumpets farthest, everybody on the stage", () => {
    const far = (id: string): number => seats.get(id)!.distanceM;
    expect(far("alto1")).toBeLessThan(far("tbn1"));
    expect(far("tbn1")).toBeLessThan(far("tpt1"));
    for (const { pan } of seats.values()) expect(Math.abs(pan)).toBeLessThanOrEqual(1);
  });

  it("has nobody standing in another's place", () => {
    const all = usualSeats(bigBand());
    for (const [index, one] of all.entries())
      for (const other of all.slice(0, index))
        expect(
          Math.hypot((one.pan - other.pan) * 4, one.distanceM - other.distanceM),
          `${one.playerId} and ${other.playerId}`,
        ).toBeGreaterThan(0.5);
  });

  it("puts the rhythm section at the director's left", () => {
    for (const id of ["piano", "bass", "drums"] as const)
      expect(accompanimentSeat(id).pan).toBeLessThan(0);
  });

  it("is plain data: a seat for every player, and for piano, bass and drums beside them", () => {
    const all = usualSeats(bigBand());
    expect(all.slice(0, 13)).toEqual([...seats.values()]);
    expect(all.slice(13).map(({ playerId }) => playerId)).toEqual(["piano", "bass", "drums"]);
    expect(JSON.parse(JSON.stringify(all))).toEqual(all);
    for (const seat of all) expect(seatProblem(seat)).toBeUndefined();
  });
});
