import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineUps, type Player } from "../../src/band/index.ts";
import { ladderPlan, ladderSizes, spreadLabels } from "../../src/ui/voicing/ladder-plan.ts";
import { narrowLabel } from "../../src/ui/voicing/ladder-strips.ts";
import { placeFlag } from "../../src/ui/voicing/place-flag.ts";
import type { Pitches } from "../../src/ui/state/session.ts";

const players = lineUps[0]?.players ?? [];

function planOf(pitches: Pitches, by: "instrument" | "section" = "instrument") {
  const size = { top: 74, bottom: 41, left: 70, width: 480, height: 600 };
  return ladderPlan({ players, pitches, by, ...size });
}

const pitchesOf = (draw: (player: Player, index: number) => number | null): Pitches =>
  Object.fromEntries(
    players.flatMap((player, index) => {
      const pitch = draw(player, index);
      return pitch === null ? [] : [[player.id, pitch] as const];
    }),
  );

describe("the ladder", () => {
  it("never lets two tokens overlap, whoever sounds what, and keeps them in their strips", () => {
    const draws = fc.array(fc.option(fc.integer({ min: 36, max: 84 })), {
      minLength: players.length,
      maxLength: players.length,
    });
    fc.assert(
      fc.property(
        draws,
        fc.constantFrom("instrument" as const, "section" as const),
        (drawn, by) => {
          const plan = planOf(
            pitchesOf((_, index) => drawn[index] ?? null),
            by,
          );
          plan.tokens.forEach((a, index) => {
            expect(a.width).toBeGreaterThan(8);
            const strip = plan.strips.find((one) => one.players.includes(a.player));
            expect(a.x).toBeGreaterThanOrEqual(strip?.x ?? Infinity);
            expect(a.x + a.width).toBeLessThanOrEqual((strip?.x ?? 0) + (strip?.width ?? 0) + 0.01);
            for (const b of plan.tokens.slice(index + 1)) {
              const isApart =
                Math.abs(a.y - b.y) >= ladderSizes.token ||
                a.x + a.width <= b.x ||
                b.x + b.width <= a.x;
              expect(isApart).toBe(true);
            }
          });
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });

  it("puts a token where its pitch is and reads a pitch back from a height", () => {
    const plan = planOf(pitchesOf(() => 62));
    for (let pitch = 41; pitch <= 74; pitch += 1) expect(plan.pitchAt(plan.yOf(pitch))).toBe(pitch);
  });

  it("keeps its scale while the voicing changes inside it", () => {
    const one = planOf(pitchesOf(() => 62));
    const other = planOf(pitchesOf((_, index) => 45 + 2 * index));
    expect(other.yOf(60)).toBe(one.yOf(60));
  });

  it("runs a thread solid over the strips that sound the note only", () => {
    const plan = planOf({ tpt1: 74, alto1: 74 });
    const [lead] = plan.rungs;
    const over = plan.strips.filter((strip) => ["trumpet", "alto-sax"].includes(strip.id));
    expect(lead?.over.map(([from]) => from)).toEqual(over.map((strip) => strip.x));
  });

  it("shows those who rest on a shelf below", () => {
    const plan = planOf({ tpt1: 74 });
    const resting = plan.tokens.filter((token) => token.pitch === null);
    expect(resting.length).toBe(players.length - 1);
    for (const token of resting) expect(token.y).toBe(plan.shelfY);
  });

  it("shortens labels to the chair, or to letter and chair where a strip holds a section", () => {
    const second = players.find((player) => player.id === "tpt2");
    const bass = players.find((player) => player.id === "btbn");
    if (second === undefined || bass === undefined) throw new Error("the big band has both");
    expect(narrowLabel(second, "instrument")).toBe("2");
    expect(narrowLabel(second, "section")).toBe("T2");
    expect(narrowLabel(bass, "instrument")).toBe("B");
  });
});

describe("labels", () => {
  it("move apart as little as possible and keep their order", () => {
    expect(spreadLabels([10, 50, 90], 17)).toEqual([10, 50, 90]);
    expect(spreadLabels([50, 50], 17)).toEqual([41.5, 58.5]);
    const spread = spreadLabels([40, 45, 50, 120], 17);
    expect(spread[3]).toBe(120);
    expect(spread.slice(0, 3)).toEqual([28, 45, 62]);
  });
});

describe("a flag", () => {
  it("stays inside the ladder and off the other tokens where there is room", () => {
    const plan = planOf(pitchesOf((_, index) => 72 - 2 * index));
    for (const token of plan.tokens) {
      const flag = placeFlag(token, "F♯4 is not ticked for this chord", plan.tokens, {
        width: 480,
        height: plan.height,
      });
      expect(flag.x).toBeGreaterThanOrEqual(0);
      expect(flag.x + flag.width).toBeLessThanOrEqual(480);
      expect(flag.y).toBeGreaterThanOrEqual(0);
    }
  });
});
