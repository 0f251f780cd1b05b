import { describe, expect, it } from "vitest";
import type { InstrumentId, SeatId } from "../../src/band/band-types.ts";
import { instrumentOf, instruments } from "../../src/band/instruments.ts";
import { levelTable } from "../../src/band/level-table.ts";
import { seatTable } from "../../src/band/seat-table.ts";
import { seatFor, seatIds, seatRow } from "../../src/band/seats.ts";

describe("seats", () => {
  it("carry the ids of the command line, big band first", () => {
    expect(seatIds).toEqual([
      ..."tpt1 tpt2 tpt3 tpt4 tbn1 tbn2 tbn3 btbn alto1 alto2 tenor1 tenor2 bari".split(" "),
      ..."flugel1 sop1 fl1 cl1 bcl1 hn1 tuba1 piano bass".split(" "),
    ]);
  });

  it.each(seatTable.map((row) => [row.id, row] as const))("%s is well formed", (_id, row) => {
    const [low, high] = row.range;
    expect(low).toBeLessThan(high);
    expect(row.home[0]).toBeLessThan(row.home[1]);
    expect(row.home[0]).toBeGreaterThanOrEqual(low);
    expect(row.home[1]).toBeLessThanOrEqual(high);
    const tops = row.zones.map(([top]) => top);
    expect(tops).toEqual([...new Set(tops)].sort((a, b) => a - b));
    expect(tops[0]).toBeGreaterThanOrEqual(low);
    expect(tops.at(-1)).toBe(high);
    for (const zone of row.zones)
      for (const value of zone) expect(Number.isInteger(value) && value >= 0).toBe(true);
    expect(row.source).not.toBe("");
  });

  it("start at the bottom of their instrument and leave it only where a lead player goes higher", () => {
    for (const { id, instrument, range } of seatTable) {
      const compass = instrumentOf(instrument).range;
      expect(range[0], id).toBe(compass.low);
      if (id !== "tpt1" && id !== "tbn1") expect(range[1], id).toBeLessThanOrEqual(compass.high);
    }
  });

  it("exist for every instrument and have limits at every level", () => {
    for (const { id } of instruments) expect(seatFor(id, 0).instrument).toBe(id);
    for (const id of seatIds) expect(Object.keys(levelTable[id])).toHaveLength(3);
  });

  it("number chairs within a section, the bass trombone being the fourth trombone", () => {
    expect(seatTable.slice(0, 13).map(({ chair }) => chair)).toEqual([
      0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 0, 1, 0,
    ]);
  });

  it("lend their row to players beyond the last chair", () => {
    expect(seatFor("trumpet", 6).id).toBe("tpt4");
    expect(seatFor("bass-trombone", 0).id).toBe("btbn");
    expect(seatFor("flute", 3).id).toBe("fl1");
  });

  it("refuse an id that is not in the table", () => {
    expect(() => seatRow("tpt9" as SeatId)).toThrow(RangeError);
    expect(() => seatFor("kazoo" as InstrumentId, 0)).toThrow(RangeError);
  });
});
