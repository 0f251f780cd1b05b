import { describe, expect, it } from "vitest";
import fc from "fast-check";
import type { Seconds } from "../../src/base/index.ts";
import {
  moveCost,
  MoveMemory,
  moveTerms,
  speedOf,
  type MoveSituation,
  type PitchOrRest,
} from "../../src/phrase/move-cost.ts";
import { playersOf } from "./support/phrases.ts";

const band = playersOf("big-band");
const player = (id: string) => {
  const found = band.find((each) => each.id === id);
  if (!found) throw new Error(id);
  return found;
};
const situation = (changed: Partial<MoveSituation> = {}): MoveSituation => ({
  speed: "medium",
  isMelodyMoving: true,
  isAfterRest: false,
  ...changed,
});
const cost = (id: string, from: number, to: number, at = situation()) =>
  moveCost(player(id), from as PitchOrRest, to as PitchOrRest, at);

describe("what a move costs", () => {
  it("is nothing for a step, more for a leap, most beyond an octave", () => {
    expect(cost("alto1", 65, 67)).toBe(0);
    const leaps = [4, 7, 9, 11, 14].map((size) => cost("alto1", 62, 62 + size));
    expect(leaps).toEqual([...leaps].sort((a, b) => a - b));
    expect(cost("alto1", 60, 76)).toBeGreaterThan(cost("alto1", 60, 72));
  });

  it("is something for a note repeated under a moving melody, nothing when the melody stands still", () => {
    expect(cost("alto1", 65, 65)).toBe(2);
    expect(cost("alto1", 65, 65, situation({ isMelodyMoving: false }))).toBe(0);
  });

  it("is more for a brass player's wide leap than for a sax's", () =>
    expect(cost("tpt1", 65, 74)).toBeGreaterThan(cost("alto1", 60, 69)));

  it("counts the slide when time is short", () => {
    const terms = moveTerms(
      player("tbn2"),
      46 as PitchOrRest,
      47 as PitchOrRest,
      situation({ speed: "fast" }),
    );
    expect(terms.map(({ text }) => text)).toContain("slide from position 1 to 7");
    expect(cost("tbn2", 46, 47, situation({ speed: "fast" }))).toBeGreaterThan(
      cost("tbn2", 46, 47, situation({ speed: "slow" })),
    );
  });

  it("counts a sax's register break between written C#5 and D5 when fast (Pimentel 2011)", () => {
    const fast = situation({ speed: "fast" });
    // Alto: written C#5 and D5 sound E4 and F4.
    expect(
      moveTerms(player("alto1"), 64 as PitchOrRest, 65 as PitchOrRest, fast).map(({ id }) => id),
    ).toEqual(["break"]);
    expect(cost("alto1", 65, 67, fast)).toBe(0);
  });

  it("counts two low sax keys under one finger when fast", () => {
    // Tenor: written Bb3 and B3 sound Ab2 and A2.
    const fast = situation({ speed: "fast" });
    expect(cost("tenor1", 44, 45, fast)).toBe(3);
    expect(cost("tenor1", 45, 46, fast)).toBe(0);
  });

  it("counts coming in and dropping out while the others go on, not where the melody is silent", () => {
    expect(cost("alto1", 0, 65)).toBeGreaterThan(0);
    expect(cost("alto1", 65, 0)).toBeGreaterThan(0);
    expect(cost("alto1", 0, 65, situation({ isAfterRest: true }))).toBe(0);
    expect(cost("alto1", 0, 0)).toBe(0);
  });

  it("is a whole number, never below 0, and the sum of its terms", () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...band),
        fc.nat(),
        fc.nat(),
        fc.constantFrom("fast", "medium", "slow"),
        fc.boolean(),
        fc.boolean(),
        (one, a, b, speed, isMelodyMoving, isAfterRest) => {
          const inRange = (n: number) => {
            const size = one.range.high - one.range.low + 2;
            const place = n % size;
            return (place === 0 ? 0 : one.range.low + place - 1) as PitchOrRest;
          };
          const at: MoveSituation = { speed, isMelodyMoving, isAfterRest };
          const whole = moveCost(one, inRange(a), inRange(b), at);
          const terms = moveTerms(one, inRange(a), inRange(b), at);
          expect(whole).toBe(terms.reduce((sum, { value }) => sum + value, 0));
          expect(Number.isInteger(whole) && whole >= 0).toBe(true);
          expect(terms.every(({ text }) => text !== "")).toBe(true);
        },
      ),
      { seed: 7 },
    ));
});

it("sorts times into fast, medium and slow", () =>
  expect([0.15, 0.3, 1].map((seconds) => speedOf(seconds as Seconds))).toEqual([
    "fast",
    "medium",
    "slow",
  ]));

it("remembers the same costs", () => {
  const memory = new MoveMemory();
  const from = [0, 55, 60, 62] as readonly PitchOrRest[];
  const to = [58, 0, 65] as readonly PitchOrRest[];
  for (let round = 0; round < 2; round++) {
    const table = memory.between(player("tbn1"), from, to, situation());
    expect([...table]).toEqual(
      from.flatMap((a) => to.map((b) => moveCost(player("tbn1"), a, b, situation()))),
    );
  }
});
