import { describe, expect, it } from "vitest";
import { isBreathBefore, plannedBreaths } from "../../src/phrase/breaths.ts";
import { melodyOf, phraseOf, playersOf, questionOf } from "./support/phrases.ts";

const band = playersOf("big-band");
const longLine = melodyOf(Array.from({ length: 12 }, () => "C5:1@C6 E5:1 G5:1 E5:1").join(" | "), {
  tempo: 60,
});
const moments = phraseOf(questionOf(longLine, { players: band })).moments.map(
  ({ moment }) => moment,
);

describe("planned breaths", () => {
  const breaths = plannedBreaths(moments, longLine, band, undefined);

  it("let every player but the one with the melody breathe in a line of 48 seconds", () => {
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

it("takes silence of a quarter of a second for a breath", () => {
  const melody = melodyOf("C5:1@C6 r:1 E5:2", { tempo: 240 });
  const found = phraseOf(questionOf(melody)).moments.map(({ moment }) => moment);
  expect(found.map((moment) => isBreathBefore(moment, melody))).toEqual([false, true]);
});
