import { describe, expect, it } from "vitest";
import { isBreathBefore, plannedBreaths } from "../../src/phrase/breaths.ts";
import { melodyOf, phraseOf, playersOf, questionOf } from "./support/phrases.ts";

const band = playersOf("big-band");
const longLine = melodyOf(Array.from({ length: 12 }, () => "C5:1@C6 E5:1 G5:1 E5:1").join(" | "), {
  tempo: 90,
});
const moments = phraseOf(questionOf(longLine, { players: band })).moments.map(
  ({ moment }) => moment,
);

describe("planned breaths", () => {
  const breaths = plannedBreaths(moments, longLine, band, undefined);

  it("let every player but the one with the melody breathe in a line of 32 seconds", () => {
    const breathing = new Set(breaths.flatMap((ids) => [...ids]));
    expect(breathing.has("tpt1")).toBe(false);
    expect([...breathing].sort()).toEqual(
      band
        .map(({ id }) => id)
        .filter((id) => id !== "tpt1")
        .sort(),
    );
  });

  it("never let more than a quarter of the band breathe at once, nor anyone on the first or last note", () => {
    expect(Math.max(...breaths.map((ids) => ids.size))).toBeLessThanOrEqual(3);
    expect(breaths[0]?.size).toBe(0);
    expect(breaths.at(-1)?.size).toBe(0);
  });

  it("fall on short notes rather than long ones, and never on the highest", () => {
    const bar = "C5:1/2@C6 D5:1/2 E5:1 D5:1/2 C5:1/2 E5:1";
    const bars = [bar, bar, "C5:1/2 D5:1/2 G5:1/2 D5:1/2 C5:1/2 E5:1/2 D5:1", bar, bar].join(" | ");
    const line = melodyOf(bars, { tempo: 100 });
    const found = phraseOf(questionOf(line, { players: band })).moments.map((one) => one.moment);
    const planned = plannedBreaths(found, line, band, undefined);
    const missed = planned.flatMap((ids, index) => [...ids].map(() => found[index]!));
    const short = missed.filter(({ duration }) => duration < line.division);
    expect(short.length).toBeGreaterThan(missed.length / 2);
    expect(Math.max(...missed.map(({ lead }) => lead))).toBeLessThan(79);
  });

  it("leave a short line alone", () => {
    const short = melodyOf("C5:1@C6 E5:1 G5:2");
    const few = phraseOf(questionOf(short, { players: band })).moments.map(({ moment }) => moment);
    expect(plannedBreaths(few, short, band, undefined).every((ids) => ids.size === 0)).toBe(true);
  });

  it("leave whoever is said to lead alone", () => {
    const led = plannedBreaths(moments, longLine, band, "alto1");
    expect(led.some((ids) => ids.has("alto1"))).toBe(false);
    expect(led.some((ids) => ids.has("tpt1"))).toBe(true);
  });
});

it("takes an eighth rest for a breath at 170 quarters a minute, not at 200", () => {
  const text = "C5:1@C6 r:1/2 E5:5/2";
  const fast = melodyOf(text, { tempo: 200 });
  const rushed = phraseOf(questionOf(fast)).moments.map(({ moment }) => moment);
  expect(rushed.map((moment) => isBreathBefore(moment, fast))).toEqual([false, false]);
  const melody = melodyOf(text, { tempo: 170 });
  const found = phraseOf(questionOf(melody)).moments.map(({ moment }) => moment);
  expect(found.map((moment) => isBreathBefore(moment, melody))).toEqual([false, true]);
});
