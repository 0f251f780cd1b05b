import type { Count } from "../base/index.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { rankOf } from "./ranking.ts";

/**
 * What a stack costs at least beyond each player's cheapest note, because every note must have a
 * player of its own: for each note the least any player pays over that player's cheapest note
 * (reduction by rows, then by columns, of the assignment problem).
 * @param stack - candidate indices, highest note first
 * @param notes - how many of them count
 * @returns cost · chairScale + chair cost to add to the bound, or `cannot` when a note has nobody
 */
export type CoverageBound = (stack: Int32Array, notes: Count) => Count;

/**
 * Makes the bound for an instance.
 * @param instance - the question in numbers
 * @param playerCost - players × candidates
 * @returns the bound
 * @source row and column reduction: H. W. Kuhn, The Hungarian method (1955)
 */
export function createCoverageBound(instance: Instance, playerCost: Int32Array): CoverageBound {
  const players = instance.players.length;
  const size = instance.candidates.length;
  const { chairs } = instance;
  const values = new Int32Array(players * (players + 1));
  const least = new Int32Array(players + 1);
  return (stack, notes) => {
    least.fill(cannot);
    for (let p = 0; p < players; p++) {
      let cheapest = cannot;
      const row = p * size;
      const chair = chairs[p]!;
      for (let j = 0; j < notes; j++) {
        const plain = playerCost[row + stack[j]!]!;
        const value = plain === cannot ? cannot : rankOf(plain, chair, j);
        values[j] = value;
        if (value < cheapest) cheapest = value;
      }
      if (cheapest === cannot) continue;
      for (let j = 0; j < notes; j++) {
        const over = values[j]! - cheapest;
        if (values[j] !== cannot && over < least[j]!) least[j] = over;
      }
    }
    let sum = 0;
    for (let j = 0; j < notes; j++) {
      if (least[j] === cannot) return cannot;
      sum += least[j]!;
    }
    return sum;
  };
}
