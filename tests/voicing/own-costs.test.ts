import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cannot, type Instance } from "../../src/voicing/instance-types.ts";
import { OwnCosts } from "../../src/voicing/own-costs.ts";
import { setsOfSection } from "../../src/voicing/section-sets.ts";
import { drawnInstance, everyAssignment, priceOf } from "./support/drawn-instance.ts";

/** Only one section, whose notes nobody else shares. */
const alone = (instance: Instance): Instance => ({
  ...instance,
  sectionNames: ["saxes"],
  sectionOf: new Int32Array(instance.players.length),
  sharedNoteCost: new Int32Array(instance.sharedNoteCost.length),
});

/** Least cost by trying everything: all notes of the set and no other, exactly so many players. */
function byTrying(instance: Instance, notes: number, set: number, players: number): number {
  let least = cannot;
  for (const places of everyAssignment(instance.players.length, notes)) {
    const sounding = places.filter((j) => j >= 0);
    const taken = sounding.reduce((bits, j) => bits | (1 << j), 0);
    const price = priceOf({ instance, notes }, places);
    if (price !== null && taken === set && sounding.length === players)
      least = Math.min(least, price);
  }
  return least;
}

describe("what a section costs on its own", () => {
  it("is what trying everything gives, for every set of notes and number of players", () => {
    fc.assert(
      fc.property(drawnInstance({ players: 4, notes: 3 }), (drawn) => {
        const { notes } = drawn;
        const instance = alone(drawn.instance);
        const players = instance.players.length;
        const costs = new OwnCosts(instance, instance.playerCost, [...instance.players.keys()]);
        const sets = setsOfSection("free", notes, players);
        const found = new Int32Array(sets.length * (players + 1));
        costs.load(
          Int32Array.from({ length: notes }, (_, j) => j),
          notes,
        );
        costs.price(sets, found);
        sets.forEach((set, i) => {
          for (let k = 1; k <= players; k++)
            expect(found[i * (players + 1) + k]).toBe(byTrying(instance, notes, set, k));
        });
      }),
      { seed: 7, numRuns: 80 },
    );
  });

  it("is the least over sets without neighbours when those are not gone through one by one", () => {
    fc.assert(
      fc.property(drawnInstance({ players: 5, notes: 5 }), (drawn) => {
        const { notes } = drawn;
        const instance = alone(drawn.instance);
        const players = instance.players.length;
        const costs = new OwnCosts(instance, instance.playerCost, [...instance.players.keys()]);
        const sets = setsOfSection("crossed", notes, players);
        const bySet = new Int32Array(sets.length * (players + 1));
        const apart = new Int32Array(players + 1);
        costs.load(
          Int32Array.from({ length: notes }, (_, j) => j),
          notes,
        );
        costs.price(sets, bySet);
        costs.leastApart(apart);
        for (let k = 1; k <= players; k++) {
          const column = Array.from(sets, (_, i) => bySet[i * (players + 1) + k]!);
          expect(apart[k]).toBe(Math.min(cannot, ...column));
        }
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it("is never above the truth for a section too large to be worked out", () => {
    fc.assert(
      fc.property(drawnInstance({ players: 8, notes: 2 }), (drawn) => {
        const { notes } = drawn;
        const instance = alone(drawn.instance);
        const players = instance.players.length;
        fc.pre(players > 6);
        const costs = new OwnCosts(instance, instance.playerCost, [...instance.players.keys()]);
        const sets = setsOfSection("free", notes, players);
        const found = new Int32Array(sets.length * (players + 1));
        costs.load(
          Int32Array.from({ length: notes }, (_, j) => j),
          notes,
        );
        costs.price(sets, found);
        expect(costs.isExact).toBe(false);
        sets.forEach((set, i) => {
          for (let k = 1; k <= players; k++)
            expect(found[i * (players + 1) + k]).toBeLessThanOrEqual(
              byTrying(instance, notes, set, k),
            );
        });
      }),
      { seed: 7, numRuns: 12 },
    );
  });
});
