import { describe, expect, it } from "vitest";
import type { Db, DbSpl, Gain } from "../../src/base/index.ts";
import {
  FULL_SCALE_DB_SPL,
  dbSplToPeak,
  dbToGain,
  gainToDb,
  peakToDbSpl,
} from "../../src/audio/level-calibration.ts";

describe("level calibration", () => {
  it("gives factor 2 for 6.02 dB and 1 for none", () => {
    expect(dbToGain((20 * Math.log10(2)) as Db)).toBeCloseTo(2, 12);
    expect(dbToGain(0 as Db)).toBe(1);
  });

  it("goes to decibels and back", () => {
    for (const db of [-80, -12, 0, 6]) expect(gainToDb(dbToGain(db as Db))).toBeCloseTo(db, 10);
    expect(gainToDb(0 as Gain)).toBe(-Infinity);
  });

  it("lets a sine reach full scale exactly at the constant, and keeps differences", () => {
    expect(dbSplToPeak(FULL_SCALE_DB_SPL)).toBe(1);
    const [soft, loud] = [60 as DbSpl, 80 as DbSpl];
    expect(dbSplToPeak(loud) / dbSplToPeak(soft)).toBeCloseTo(10, 10);
    expect(peakToDbSpl(dbSplToPeak(soft))).toBeCloseTo(soft, 10);
  });
});
