import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import type { PlayerLevel, SeatId } from "../../src/band/band-types.ts";
import {
  chairAfterChange,
  makePlayer,
  playerFrom,
  reachOf,
  sharedRange,
} from "../../src/band/players.ts";
import { seatFor, seatIds, seatRow } from "../../src/band/seats.ts";

const levels: readonly PlayerLevel[] = ["school", "semi-pro", "pro"];

describe("players", () => {
  it("are professional and open unless asked otherwise", () => {
    expect(makePlayer({ seat: "tbn1" })).toMatchObject({
      id: "tbn1",
      name: "Trombone 1",
      abbreviation: "Tbn 1",
      instrument: "trombone",
      section: "trombones",
      chair: 0,
      level: "pro",
      mute: "open",
    });
  });

  it("are named after their chair, without a number where there is one only", () => {
    expect(makePlayer({ seat: "bari" }).name).toBe("Baritone");
    expect(makePlayer({ seat: "btbn" }).abbreviation).toBe("B. Tbn");
    expect(makePlayer({ seat: "tpt4", id: "tpt5" }).name).toBe("Trumpet 5");
  });

  it("say whose double they hold, so that two flutes are told apart", () => {
    const first = makePlayer({ seat: "alto1", instrument: "flute" });
    const second = makePlayer({ seat: "tenor1", instrument: "flute" });
    expect(first).toMatchObject({
      id: "alto1",
      name: "Flute (Alto 1)",
      section: "saxes",
      chair: 0,
    });
    expect(second.abbreviation).toBe("Fl (Ten 1)");
  });

  it("reach two semitones past what is easy and no further", () => {
    const school = makePlayer({ seat: "tpt2", level: "school" });
    expect(school.easyRange).toEqual({ low: 52, high: 74 });
    expect(school.range).toEqual({ low: 52, high: 76 });
  });

  it("never reach past their chair, whatever the level", () => {
    fc.assert(
      fc.property(fc.constantFrom(...seatIds), fc.constantFrom(...levels), (seat, level) => {
        const { range, easyRange, zones, home } = makePlayer({ seat, level });
        const [low, high] = seatRow(seat).range;
        expect(low <= range.low && range.low <= easyRange.low).toBe(true);
        expect(easyRange.high <= range.high && range.high <= high).toBe(true);
        expect(zones.at(-1)?.top).toBe(high);
        expect(home.low).toBeLessThan(home.high);
      }),
      { seed: 7 },
    );
  });

  it("never lose a note by getting better", () => {
    for (const seat of seatIds) {
      const [school, semiPro, pro] = levels.map((level) => makePlayer({ seat, level }).range);
      for (const [worse, better] of [
        [school, semiPro],
        [semiPro, pro],
      ]) {
        expect(better?.low).toBeLessThanOrEqual(Number(worse?.low));
        expect(better?.high).toBeGreaterThanOrEqual(Number(worse?.high));
      }
    }
  });

  it("are cut by a personal range, which is kept", () => {
    const personalRange = { low: soundingMidi(30), high: soundingMidi(75) };
    const player = makePlayer({ seat: "tpt1", personalRange });
    expect(player.range).toEqual({ low: 52, high: 75 });
    expect(player.personalRange).toEqual(personalRange);
  });

  it("cannot be made of an unknown chair, a mute not taken or limits that leave nothing", () => {
    expect(() => makePlayer({ seat: "kazoo1" as SeatId })).toThrow(RangeError);
    expect(() => makePlayer({ seat: "alto1", mute: "cup" })).toThrow(/cup/);
    const personalRange = { low: soundingMidi(100), high: soundingMidi(110) };
    expect(() => makePlayer({ seat: "tpt1", personalRange })).toThrow(RangeError);
  });
});

describe("parts of a player", () => {
  it("share a stretch, or none", () => {
    const range = (low: number, high: number) => ({
      low: soundingMidi(low),
      high: soundingMidi(high),
    });
    expect(sharedRange(range(40, 60), range(50, 70))).toEqual({ low: 50, high: 60 });
    const none = sharedRange(range(40, 50), range(60, 70));
    expect(none.low).toBeGreaterThan(none.high);
  });

  it("give the same player as the request", () => {
    const row = seatRow("alto2");
    const player = playerFrom({ id: "alto2", row, chair: 1, level: "school", mute: "open" });
    expect(player).toEqual(makePlayer({ seat: "alto2", level: "school" }));
    expect(player.range).toEqual(reachOf(row, "school"));
  });

  it("keep the chair inside the section only", () => {
    const alto2 = seatRow("alto2");
    expect(chairAfterChange(alto2, seatFor("flute", 1))).toBe(1);
    expect(chairAfterChange(alto2, seatFor("bass-trombone", 1))).toBe(3);
  });
});
