import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createAssigner } from "../../src/voicing/assignment.ts";
import { freeAssignment } from "../../src/voicing/assignment-network.ts";
import type { AssignmentLimits } from "../../src/voicing/assignment-types.ts";
import { cannot } from "../../src/voicing/instance-types.ts";
import {
  drawnInstance,
  everyAssignment,
  priceOf,
  type DrawnInstance,
} from "./support/drawn-instance.ts";

/*
 * Covers src/voicing/cheapest-chain.ts, src/voicing/assignment-prices.ts and
 * src/voicing/first-in-order.ts: the parts of one method, judged by trying everything.
 */
interface Best {
  readonly value: number;
  readonly places: readonly number[];
}

/** Players in order, higher notes first, resting last. */
function comesFirst(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((place, p) => place !== b[p]);
  const depth = (place: number): number => (place < 0 ? 99 : place);
  return at >= 0 && depth(a[at]!) < depth(b[at]!);
}

function isWithin(
  { instance, notes }: DrawnInstance,
  limits: AssignmentLimits,
  places: readonly number[],
): boolean {
  const all = Array.from({ length: notes }, (_, j) => j);
  if (!all.every((j) => places.includes(j))) return false;
  if (places.some((j, p) => instance.heldTo[p]! >= 0 && j !== instance.heldTo[p])) return false;
  return instance.sectionNames.every((_, s) => {
    const own = places.filter((j, p) => instance.sectionOf[p] === s && j >= 0);
    const allowed = limits.allowed?.[s] ?? -1;
    return (
      own.every((j) => ((allowed >> j) & 1) === 1) &&
      own.length <= (limits.mostOfSection?.[s] ?? 99) &&
      own.length >= (limits.sectionMustSound?.[s] ?? 0) &&
      (!limits.mustFillAllowed || all.every((j) => ((allowed >> j) & 1) === 0 || own.includes(j)))
    );
  });
}

function bestByTrying(drawn: DrawnInstance, limits: AssignmentLimits): ReadonlyMap<number, Best> {
  const best = new Map<number, Best>();
  for (const places of everyAssignment(drawn.instance.players.length, drawn.notes)) {
    const value = isWithin(drawn, limits, places) ? priceOf(drawn, places) : null;
    if (value === null) continue;
    const players = places.filter((j) => j >= 0).length;
    const before = best.get(players);
    const isFirst =
      !before ||
      value < before.value ||
      (value === before.value && comesFirst(places, before.places));
    if (isFirst) best.set(players, { value, places });
  }
  return best;
}

function compare(drawn: DrawnInstance, limits: AssignmentLimits): number {
  const { instance, notes } = drawn;
  const players = instance.players.length;
  const asked = { stack: Int32Array.from({ length: notes }, (_, j) => j), notes, limits };
  const assigner = createAssigner(instance, instance.playerCost);
  const judged = bestByTrying(drawn, limits);
  const everyNumber = Array.from({ length: players }, (_, k) => k + 1);
  assigner.solve(asked, players);
  const values = Array.from(assigner.values);
  const found = assigner.placesFor(asked, everyNumber);
  for (const k of everyNumber) {
    expect(values[k]).toBe(judged.get(k)?.value ?? cannot);
    expect(found.has(k)).toBe(judged.has(k));
    expect(Array.from(found.get(k) ?? [])).toEqual(judged.get(k)?.places ?? []);
  }
  return judged.size;
}

const small = drawnInstance({ players: 5, notes: 3 });

describe("the assignment of players to notes", () => {
  it("is the cheapest, and the first in order among equals, for every number of players", () => {
    let answers = 0;
    fc.assert(
      fc.property(small, (drawn) => {
        answers += compare(drawn, freeAssignment);
      }),
      { seed: 7, numRuns: 300 },
    );
    expect(answers).toBeGreaterThan(300);
  });

  it("is so too when sections must sound, have a most, and fill the notes they are given", () => {
    const limits = fc.record({
      allowed: fc.array(fc.nat(7), { minLength: 3, maxLength: 3 }),
      mustFillAllowed: fc.boolean(),
      mostOfSection: fc.array(fc.nat(4), { minLength: 3, maxLength: 3 }),
      sectionMustSound: fc.array(fc.nat(1), { minLength: 3, maxLength: 3 }),
    });
    let answers = 0;
    fc.assert(
      fc.property(small, limits, fc.nat(7), (drawn, asked, which) => {
        const sections = drawn.instance.sectionNames.length;
        const whole = 2 ** drawn.notes - 1;
        const row = (values: readonly number[]): Int32Array =>
          Int32Array.from(values.slice(0, sections));
        answers += compare(drawn, {
          allowed: which & 1 ? row(asked.allowed.map((set) => set & whole)) : null,
          mustFillAllowed: (which & 1) === 1 && asked.mustFillAllowed,
          mostOfSection: which & 2 ? row(asked.mostOfSection) : null,
          sectionMustSound: which & 4 ? row(asked.sectionMustSound) : null,
        });
      }),
      { seed: 7, numRuns: 600 },
    );
    expect(answers).toBeGreaterThan(200);
  });

  it("costs ever more for each further player on a fixed stack", () => {
    fc.assert(
      fc.property(drawnInstance({ players: 8, notes: 4 }), ({ instance, notes }) => {
        const assigner = createAssigner(instance, instance.playerCost);
        const stack = Int32Array.from({ length: notes }, (_, j) => j);
        assigner.solve({ stack, notes, limits: freeAssignment }, instance.players.length);
        const values = Array.from(assigner.values).filter((value) => value !== cannot);
        const steps = values.slice(1).map((value, i) => value - values[i]!);
        expect(steps).toEqual([...steps].sort((a, b) => a - b));
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
