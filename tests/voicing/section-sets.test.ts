import { describe, expect, it } from "vitest";
import { cannot } from "../../src/voicing/instance-types.ts";
import { leastTogether } from "../../src/voicing/least-sums.ts";
import { mostOnSet, setsOfSection } from "../../src/voicing/section-sets.ts";
import { bitsIn } from "../../src/voicing/stack-sets.ts";

describe("the notes one section may sound", () => {
  it("are 28 runs or 33 sets without neighbours in a stack of seven", () => {
    // The counts of the search model, section 8: n(n + 1)/2, and a Fibonacci number less one.
    expect(setsOfSection("by-section", 7, 7)).toHaveLength(28);
    expect(setsOfSection("crossed", 7, 7)).toHaveLength(33);
    expect(setsOfSection("free", 7, 7)).toHaveLength(127);
  });

  it("are each listed once, after the same set without its lowest note, and no larger than asked", () => {
    for (const layer of ["free", "by-section", "crossed"] as const) {
      const sets = Array.from(setsOfSection(layer, 8, 4));
      expect(new Set(sets).size).toBe(sets.length);
      sets.forEach((set, i) => {
        expect(bitsIn(set)).toBeLessThanOrEqual(4);
        const before = set & ~(1 << (31 - Math.clz32(set)));
        if (before !== 0) expect(sets.slice(0, i)).toContain(before);
      });
    }
  });

  it("are runs without a hole, or have no neighbours", () => {
    const binary = (layer: "by-section" | "crossed"): readonly string[] =>
      Array.from(setsOfSection(layer, 9, 5), (set) => set.toString(2));
    for (const set of binary("by-section")) expect(set).toMatch(/^1+0*$/);
    for (const set of binary("crossed")) expect(set).not.toContain("11");
  });

  it("are three for a full section voiced by itself, two in small stacks", () => {
    expect(mostOnSet("by-section", 0b111, 7, 5)).toBe(5);
    expect(mostOnSet("by-section", 0b11, 7, 5)).toBe(2);
    expect(mostOnSet("by-section", 0b11, 4, 5)).toBe(5);
    expect(mostOnSet("by-section", 0b1, 4, 5)).toBe(2);
    expect(mostOnSet("crossed", 0b1, 7, 5)).toBe(5);
  });
});

describe("least sums", () => {
  it("share a number of players among groups at the least cost", () => {
    const groups = [
      [0, 4, 5],
      [cannot, 1, 7],
      [0, 3],
    ].map((costs) => Int32Array.from(costs));
    // One: the second group's. Two: it and the third's. Three: 1 + 5. Five: 5 + 7 + 3.
    expect(Array.from(leastTogether(groups, 6))).toEqual([cannot, 1, 4, 6, 9, 15, cannot]);
    expect(Array.from(leastTogether([], 1))).toEqual([0, cannot]);
  });
});
