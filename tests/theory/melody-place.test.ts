import { describe, expect, it } from "vitest";
import type { Divisions } from "../../src/theory/index.ts";
import {
  barCount,
  barLength,
  barStart,
  beatLength,
  placeOf,
  placeText,
} from "../../src/theory/melody-place.ts";
import { melodyOf } from "../phrase/support/phrases.ts";

const at = (value: number) => value as Divisions;

describe("places in a melody", () => {
  const time = { division: 12, metre: { beats: 4, beatType: 4 }, pickup: at(12) };

  it("counts the pickup as the end of a full bar, bar 0", () => {
    expect(placeOf(time, at(0))).toEqual({ bar: 0, beat: 4, part: [0, 1] });
    expect(placeText(time, at(6))).toBe("the pickup, the and of 4");
  });

  it("counts bars and beats from 1 after the pickup", () => {
    expect(placeText(time, at(12))).toBe("bar 1, beat 1");
    expect(placeText(time, at(12 + 48 + 30))).toBe("bar 2, the and of 3");
  });

  it("names thirds of a beat exactly", () =>
    expect(placeText(time, at(12 + 16))).toBe("bar 1, 1/3 past beat 2"));

  it("counts six eighths as two beats (compound metre: common practice)", () => {
    const six = { division: 12, metre: { beats: 6, beatType: 8 }, pickup: at(0) };
    expect(barLength(six)).toBe(36);
    expect(beatLength(six)).toBe(18);
    expect(placeText(six, at(18))).toBe("bar 1, beat 2");
  });

  it("counts three eighths as three beats", () =>
    expect(beatLength({ division: 12, metre: { beats: 3, beatType: 8 }, pickup: at(0) })).toBe(6));

  it("knows where bars begin and how many there are", () => {
    const melody = melodyOf("C5:1 | D5:4 | E5:2 r:2");
    expect(barStart(melody, 0)).toBe(0);
    expect(barStart(melody, 2)).toBe(melody.pickup + barLength(melody));
    expect(barCount(melody)).toBe(2);
  });
});
