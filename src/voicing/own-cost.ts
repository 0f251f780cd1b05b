import { chairScale } from "./assignment.ts";
import { cannot, type Instance } from "./instance-types.ts";

const chairDepth = 12;
/** Sections up to this size are worked out exactly; larger ones by a bound. */
const largestExact = 6;

/** How many bits are set. */
export function bitsIn(set: number): number {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count++;
  return count;
}

/** Least cost of one section on a set of notes, index = how many of its players sound. */
export type OwnCostsOfSet = (set: number) => Int32Array;

/**
 * Makes a function that prices one section on its own: every note of the set has at least one of
 * its players, and players who share a note pay for it (N2). Exact for sections up to six players
 * (subsets of players, note by note), a lower bound above.
 * @param instance - the question in numbers
 * @param costs - players × candidates
 * @param members - players of each section
 * @returns for a section and a stack, the costs by set and number of players, `cannot` if none;
 *   the array is reused
 */
export function createOwnCosts(
  instance: Instance,
  costs: Int32Array,
  members: readonly (readonly number[])[],
): (s: number, stack: Int32Array, notes: number) => OwnCostsOfSet {
  const size = instance.candidates.length;
  const counts = instance.players.length + 1;
  const largest = Math.max(1, ...members.map((own) => Math.min(own.length, largestExact)));
  const subsets = 1 << largest;
  const onNote = new Int32Array(counts * subsets);
  let before = new Int32Array(subsets);
  let after = new Int32Array(subsets);
  const result = new Int32Array(counts);

  function priceSubsets(own: readonly number[], stack: Int32Array, notes: number): void {
    for (let j = 0; j < notes; j++) {
      const c = stack[j]!;
      for (let subset = 1; subset < 1 << own.length; subset++) {
        let sum = 0;
        let count = 0;
        for (let i = 0; i < own.length && sum < cannot; i++) {
          if (((subset >> i) & 1) === 0) continue;
          const plain = costs[own[i]! * size + c]!;
          const shared = instance.sharedInSectionCost[c * counts + count]!;
          const chair = instance.chairs[own[i]!]! * (chairDepth - j);
          sum = plain === cannot ? cannot : sum + (plain + shared) * chairScale + chair;
          count++;
        }
        onNote[j * subsets + subset] = sum;
      }
    }
  }

  function exact(own: readonly number[], set: number): Int32Array {
    const all = (1 << own.length) - 1;
    before.fill(cannot);
    before[0] = 0;
    for (let rest = set; rest !== 0; rest &= rest - 1) {
      const row = (31 - Math.clz32(rest & -rest)) * subsets;
      after.fill(cannot);
      for (let used = 0; used <= all; used++) {
        const base = before[used]!;
        if (base === cannot) continue;
        const free = all & ~used;
        for (let subset = free; subset !== 0; subset = (subset - 1) & free) {
          const price = onNote[row + subset]!;
          if (price !== cannot && base + price < after[used | subset]!)
            after[used | subset] = base + price;
        }
      }
      [before, after] = [after, before];
    }
    result.fill(cannot);
    for (let used = 1; used <= all; used++) {
      const count = bitsIn(used);
      if (before[used]! < result[count]!) result[count] = before[used]!;
    }
    return result;
  }

  function bounded(own: readonly number[], stack: Int32Array, set: number): Int32Array {
    const least = own.map((p) => {
      let cheapest = cannot;
      for (let rest = set; rest !== 0; rest &= rest - 1) {
        const j = 31 - Math.clz32(rest & -rest);
        const plain = costs[p * size + stack[j]!]!;
        if (plain === cannot) continue;
        const value = plain * chairScale + instance.chairs[p]! * (chairDepth - j);
        cheapest = Math.min(cheapest, value);
      }
      return cheapest;
    });
    least.sort((a, b) => a - b);
    const inSet = bitsIn(set);
    result.fill(cannot);
    let sum = 0;
    for (let m = 1; m <= own.length && least[m - 1]! < cannot; m++) {
      sum += least[m - 1]!;
      if (m >= inSet) result[m] = sum + (m - inSet) * chairScale;
    }
    return result;
  }

  return (s, stack, notes) => {
    const own = members[s]!;
    if (own.length > largestExact) return (set) => bounded(own, stack, set);
    priceSubsets(own, stack, notes);
    return (set) => exact(own, set);
  };
}
