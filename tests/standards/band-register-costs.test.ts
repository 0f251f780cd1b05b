import { describe, expect, it } from "vitest";
import { quantity, soundingMidi } from "../../src/base/index.ts";
import {
  costOfHome,
  costOfLevel,
  costOfRegister,
  makePlayer,
  seatIds,
  withPersonalRange,
  type Dynamic,
  type SeatId,
} from "../../src/band/index.ts";

const cost = (seat: SeatId, midi: number, dynamic: Dynamic): number =>
  costOfRegister(makePlayer({ seat }), soundingMidi(midi), dynamic);

// D. Berger, "Notes from the Trumpet Section": there is no such thing as a soft trumpet above the
// staff. The numbers themselves are judgement.
describe("trumpets above the staff", () => {
  it.each([78, 80, 82])("cost 6 or more at p on MIDI note %i and little at f", (midi) => {
    expect(cost("tpt2", midi, "p")).toBeGreaterThanOrEqual(6);
    expect(cost("tpt2", midi, "f")).toBeLessThanOrEqual(2);
  });
});

// The table of the cost model, row by row: last note of every zone, at f, mf and p.
const zones: readonly [SeatId, number, number, number, number][] = [
  ["tpt1", 57, 6, 4, 3],
  ["tpt1", 77, 0, 0, 1],
  ["tpt1", 79, 1, 2, 6],
  ["tpt1", 82, 2, 4, 10],
  ["tpt1", 86, 6, 9, 14],
  ["tpt4", 82, 2, 4, 10],
  ["tbn1", 45, 3, 3, 4],
  ["tbn1", 65, 0, 0, 0],
  ["tbn1", 67, 2, 2, 4],
  ["tbn2", 70, 4, 5, 8],
  ["tbn1", 72, 8, 9, 12],
  ["btbn", 60, 0, 0, 0],
  ["btbn", 65, 3, 3, 5],
  ["alto1", 53, 5, 5, 9],
  ["alto2", 75, 0, 0, 0],
  ["alto1", 78, 2, 3, 5],
  ["alto2", 80, 5, 6, 9],
  ["tenor1", 48, 4, 4, 8],
  ["tenor2", 70, 0, 0, 0],
  ["tenor1", 73, 2, 3, 5],
  ["tenor2", 75, 5, 6, 9],
  ["bari", 41, 0, 1, 4],
  ["bari", 63, 0, 0, 0],
  ["bari", 66, 2, 3, 5],
  ["bari", 68, 5, 6, 9],
];

describe("costs by register", () => {
  it.each(zones)("of %s on MIDI note %i are %i at f, %i at mf, %i at p", (seat, midi, f, mf, p) => {
    expect(cost(seat, midi, "f")).toBe(f);
    expect(cost(seat, midi, "mf")).toBe(mf);
    expect(cost(seat, midi, "p")).toBe(p);
  });

  it("change on the note after the top of a zone", () => {
    expect(cost("tpt1", 58, "f")).toBe(0);
    expect(cost("tbn1", 46, "mf")).toBe(0);
    expect(cost("alto1", 54, "p")).toBe(0);
  });
});

describe("homes of the chairs", () => {
  const homes: readonly [SeatId, number, number][] = [
    ["tpt1", 67, 79],
    ["tpt2", 64, 76],
    ["tpt3", 62, 74],
    ["tpt4", 60, 72],
    ["tbn1", 55, 66],
    ["tbn2", 52, 64],
    ["tbn3", 50, 62],
    ["btbn", 36, 50],
    ["alto1", 62, 76],
    ["alto2", 59, 72],
    ["tenor1", 55, 67],
    ["tenor2", 50, 64],
    ["bari", 38, 54],
  ];

  it.each(homes)("%s lives from %i to %i", (seat, low, high) => {
    const player = makePlayer({ seat });
    const at = (midi: number): number => costOfHome(player, soundingMidi(midi));
    expect(player.home).toEqual({ low, high });
    expect([at(low), at(high)]).toEqual([0, 0]);
    expect([at(low - 1), at(low - 3), at(low - 4)]).toEqual([1, 1, 2]);
    expect([at(high + 3), at(high + 7)]).toEqual([1, 3]);
  });
});

describe("cost of level", () => {
  it("is 4 for every semitone outside the easy range", () => {
    const school = makePlayer({ seat: "tpt1", level: "school" });
    expect(costOfLevel(school, soundingMidi(77))).toBe(0);
    expect(costOfLevel(school, soundingMidi(78))).toBe(4);
    expect(costOfLevel(school, soundingMidi(79))).toBe(8);
  });

  it("never falls on a professional of any chair", () => {
    for (const seat of seatIds) {
      const player = makePlayer({ seat });
      for (let midi = Number(player.range.low); midi <= player.range.high; midi += 1)
        expect(costOfLevel(player, soundingMidi(midi)), `${seat} ${midi}`).toBe(0);
    }
  });

  it("keeps a personal range apart from the level", () => {
    const limits = { low: quantity<never>(60), high: quantity<never>(70) };
    const player = withPersonalRange(makePlayer({ seat: "alto1" }), limits);
    expect(player.ok && player.value.easyRange).toEqual({ low: 49, high: 80 });
  });
});
