import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createAssigner } from "../../src/voicing/assignment.ts";
import { freeAssignment } from "../../src/voicing/assignment-network.ts";
import { createCoverageBound } from "../../src/voicing/coverage-bound.ts";
import { cannot } from "../../src/voicing/instance-types.ts";
import { sharingAtLeast } from "../../src/voicing/sharing-bound.ts";
import { StackBounds } from "../../src/voicing/stack-bounds.ts";
import { drawnInstance } from "./support/drawn-instance.ts";

/** What a stack without players costs in these tests. */
const stackCost = 5;

const drawn = drawnInstance({ players: 8, notes: 4 });

describe("the bound of a stack", () => {
  it("is never above the cheapest assignment, with a player of its own for every note", () => {
    let tight = 0;
    fc.assert(
      fc.property(drawn, ({ instance, notes }) => {
        const players = instance.players.length;
        const stack = Int32Array.from({ length: notes }, (_, j) => j);
        const bounds = new StackBounds(instance, instance.playerCost);
        const row = new Int32Array(players + 1);
        stack.forEach((candidate, depth) => bounds.enter(depth, candidate));
        bounds.write(notes, stackCost, row, 0);
        const more = createCoverageBound(instance, instance.playerCost)(stack, notes);
        const assigner = createAssigner(instance, instance.playerCost);
        assigner.solve({ stack, notes, limits: freeAssignment }, players);
        for (let k = notes; k <= players; k++) {
          const value = assigner.values[k]!;
          if (value === cannot) continue;
          const truth = 4096 * stackCost + value;
          expect(row[k]! + more).toBeLessThanOrEqual(truth);
          if (row[k]! + more === truth) tight++;
        }
      }),
      { seed: 7, numRuns: 500 },
    );
    // A bound of nothing at all would pass too: it must reach the truth now and then.
    expect(tight).toBeGreaterThan(100);
  });
});

describe("the least cost of sharing", () => {
  it("is that of the cheapest way to spread the players over the notes", () => {
    const asked = fc.tuple(
      drawn,
      fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 4, maxLength: 4 }),
    );
    fc.assert(
      fc.property(asked, ([{ instance, notes }, atLeast]) => {
        const counts = instance.players.length + 1;
        const cover = Int32Array.from(atLeast.slice(0, notes));
        const covered = cover.reduce((sum, count) => sum + count, 0);
        fc.pre(covered < counts);
        const stack = Int32Array.from({ length: notes }, (_, j) => j);
        for (let k = covered; k < counts; k++) {
          const all = [...spreads(k, Array.from(cover))].map((here) =>
            here.reduce((sum, count, j) => {
              for (let m = 1; m < count; m++) sum += instance.sharedNoteCost[j * counts + m]!;
              return sum;
            }, 0),
          );
          expect(sharingAtLeast(instance, stack, cover, k)).toBe(4096 * Math.min(...all));
        }
      }),
      { seed: 7, numRuns: 150 },
    );
  });
});

/** Every way to have so many players in all, each note with its least or more. */
function* spreads(players: number, least: readonly number[]): Generator<readonly number[]> {
  const [first, ...others] = least;
  if (first === undefined) {
    if (players === 0) yield [];
    return;
  }
  const needed = others.reduce((sum, count) => sum + count, 0);
  for (let here = first; here <= players - needed; here++)
    for (const rest of spreads(players - here, others)) yield [here, ...rest];
}
