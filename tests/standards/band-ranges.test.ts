import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import {
  canSound,
  instrumentOf,
  lineUps,
  makePlayer,
  type InstrumentId,
  type Player,
  type PlayerLevel,
  type SeatId,
} from "../../src/band/index.ts";

// Sounding compass of a competent adult, by instrument. Sources: Ranges of Orchestral Instruments
// (flute, clarinets), Jazz arranging tutorial (soprano), encyclopedia article (alto: Db3 to Ab5),
// instrument appendix cards (tenor, horn), Johnstone 1917 (trumpet), Arranging and Orchestration
// Concepts (trombone), US Army Field Band (pedal Bb of the bass trombone), music21 (double bass).
const compass: readonly [InstrumentId, number, number][] = [
  ["flute", 60, 98],
  ["clarinet", 50, 89],
  ["bass-clarinet", 37, 77],
  ["soprano-sax", 56, 87],
  ["alto-sax", 49, 80],
  ["tenor-sax", 44, 75],
  ["baritone-sax", 36, 68],
  ["trumpet", 52, 82],
  ["flugelhorn", 52, 80],
  ["horn", 35, 77],
  ["trombone", 40, 70],
  ["bass-trombone", 34, 70],
  ["tuba", 29, 65],
  ["piano", 21, 108],
  ["double-bass", 28, 55],
];

describe("the compass of instruments", () => {
  it.each(compass)("is as published for the %s", (id, low, high) => {
    expect(instrumentOf(id).range).toEqual({ low, high });
  });

  it("lets all horns meet on Bb3 to G4", () => {
    // "Big band writing" (ensemble): a unison of all horns works only about Bb3 to G4.
    const horns: readonly InstrumentId[] = [
      "trumpet",
      "trombone",
      "bass-trombone",
      "alto-sax",
      "tenor-sax",
      "baritone-sax",
    ];
    const low = Math.max(...horns.map((id) => instrumentOf(id).range.low));
    const high = Math.min(...horns.map((id) => instrumentOf(id).range.high));
    expect(low).toBeLessThanOrEqual(58);
    expect(high).toBeGreaterThanOrEqual(67);
    expect([low, high]).toEqual([52, 68]);
  });

  it("lets every player of the big band sound Bb3 to G4 but the bass trombone its top", () => {
    const band = lineUps.find(({ id }) => id === "big-band")?.players ?? [];
    expect(band).toHaveLength(13);
    for (const player of band.filter(({ id }) => id !== "btbn"))
      for (let midi = 58; midi <= 67; midi += 1)
        expect(canSound(player, soundingMidi(midi)), `${player.id} ${midi}`).toBe(true);
  });
});

const easyTop = (seat: SeatId, level: PlayerLevel): number =>
  makePlayer({ seat, level }).easyRange.high;
const easyLow = (seat: SeatId, level: PlayerLevel): number =>
  makePlayer({ seat, level }).easyRange.low;

describe("levels", () => {
  it("hold a school trumpet to written G5 and a school trombone to D4", () => {
    // US Army Field Band grading page, grade 1-2; C. Clark's clinic agrees on the trumpet.
    expect(easyTop("tpt1", "school")).toBe(77);
    expect(easyTop("tbn2", "school")).toBe(62);
  });

  it("let an average lead trumpet up to written C6", () => {
    // US Army Field Band grading page, grade 3-4: C6 to D6.
    expect(easyTop("tpt1", "semi-pro")).toBe(82);
  });

  it("give the bass trombone its pedal Bb from the middle level on", () => {
    // US Army Field Band grading page, grade 3-4.
    expect(easyLow("btbn", "semi-pro")).toBe(34);
  });

  it("follow the proposal for the other chairs", () => {
    // Value from memory, to be reviewed by a band director. Written: tpt 2-4 E5 A5 C6, lead trombone
    // F4 A4 C5, trombones D4 F4 Bb4, alto D6 F6, tenor C6 E6 F6, baritone G5 C6.
    const tops = (seat: SeatId): number[] =>
      (["school", "semi-pro", "pro"] as const).map((level) => easyTop(seat, level));
    expect(tops("tpt3")).toEqual([74, 79, 82]);
    expect(tops("tbn1")).toEqual([65, 69, 72]);
    expect(tops("tbn3")).toEqual([62, 65, 70]);
    expect(tops("alto2")).toEqual([77, 80, 80]);
    expect(tops("tenor1")).toEqual([70, 74, 75]);
    expect(tops("bari")).toEqual([58, 63, 68]);
    expect(easyLow("btbn", "school")).toBe(41);
    expect(easyLow("bari", "school")).toBe(37);
  });
});

describe("the professional big band", () => {
  const players: readonly Player[] = lineUps.find(({ id }) => id === "big-band")?.players ?? [];

  // Handbook tops widened by the professional row (lead trumpet E6, lead trombone C5).
  it("has the ranges of the cost model", () => {
    expect(players.map(({ id, range }) => [id, range.low, range.high])).toEqual([
      ["tpt1", 52, 86],
      ["tpt2", 52, 82],
      ["tpt3", 52, 82],
      ["tpt4", 52, 82],
      ["tbn1", 40, 72],
      ["tbn2", 40, 70],
      ["tbn3", 40, 70],
      ["btbn", 34, 65],
      ["alto1", 49, 80],
      ["alto2", 49, 80],
      ["tenor1", 44, 75],
      ["tenor2", 44, 75],
      ["bari", 36, 68],
    ]);
  });

  it("finds nothing of its range uneasy", () => {
    for (const { range, easyRange } of players) expect(easyRange).toEqual(range);
  });
});
