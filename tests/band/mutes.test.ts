import { describe, expect, it } from "vitest";
import { instruments } from "../../src/band/instruments.ts";
import { muteTable } from "../../src/band/mute-table.ts";
import { muteRow, mutesOf } from "../../src/band/mutes.ts";
import type { MuteId } from "../../src/band/band-types.ts";

describe("mutes", () => {
  it("let everyone play open", () => {
    for (const { id } of instruments) expect(mutesOf(id)[0]).toBe("open");
    expect(muteRow("open")).toMatchObject({ weight: 1, lowCost: 0 });
  });

  it("belong to brass only", () => {
    for (const { id, isBrass } of instruments) expect(mutesOf(id).length > 1).toBe(isBrass);
  });

  it("give trumpet and trombone the five of the trade", () => {
    expect(mutesOf("trumpet")).toEqual(["open", "cup", "straight", "harmon", "plunger", "bucket"]);
    expect(mutesOf("trombone")).toEqual(mutesOf("trumpet"));
  });

  it("never add weight, and cost whole numbers", () => {
    for (const { weight, cost, lowCost, source } of muteTable) {
      expect(weight).toBeGreaterThan(0);
      expect(weight).toBeLessThanOrEqual(1);
      for (const value of [...Object.values(cost), lowCost])
        expect(Number.isInteger(value) && value >= 0).toBe(true);
      expect(source).not.toBe("");
    }
  });

  it("refuse an id that is not in the table", () => {
    expect(() => muteRow("sock" as MuteId)).toThrow(RangeError);
  });
});
