import { describe, expect, it } from "vitest";
import { dbToPower, powerToDb, sumLevels } from "../../src/acoustics/levels.ts";
import type { Db, DbSpl } from "../../src/base/index.ts";

describe("levels", () => {
  it("go to powers and back", () => {
    for (const level of [-20, 0, 3, 94] as Db[])
      expect(powerToDb(dbToPower(level))).toBeCloseTo(level, 12);
  });

  it("of two equal sounds add to three decibels more", () => {
    expect(sumLevels([60, 60] as DbSpl[])).toBeCloseTo(63.0103, 4);
  });

  it("of nothing are minus infinity", () => expect(sumLevels([])).toBe(-Infinity));
});
