import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addToSet, bitsIn, comesBefore, isInSet, readStack } from "../../src/voicing/stack-sets.ts";

const notes = fc.uniqueArray(fc.nat(63), { minLength: 1, maxLength: 24 });

function setOf(indices: readonly number[]): readonly [number, number] {
  const words = new Int32Array(2);
  for (const index of indices) addToSet(words, 0, index);
  return [words[0]!, words[1]!];
}

describe("a set of candidates in two words", () => {
  it("gives back what was put in, highest note first", () => {
    fc.assert(
      fc.property(notes, fc.nat(63), (indices, other) => {
        const [high, low] = setOf(indices);
        const into = new Int32Array(24);
        const count = readStack(high, low, into);
        expect(Array.from(into.subarray(0, count))).toEqual([...indices].sort((a, b) => a - b));
        expect(isInSet(high, low, other)).toBe(indices.includes(other));
        expect(bitsIn(high) + bitsIn(low)).toBe(indices.length);
      }),
      { seed: 7 },
    );
  });

  it("comes before another when it has the higher note where the two first differ", () => {
    fc.assert(
      fc.property(notes, notes, (one, other) => {
        const only = (a: readonly number[], b: readonly number[]): number =>
          Math.min(99, ...a.filter((index) => !b.includes(index)));
        const expected = only(one, other) < only(other, one);
        expect(comesBefore(...setOf(one), ...setOf(other))).toBe(expected);
      }),
      { seed: 7 },
    );
  });
});
