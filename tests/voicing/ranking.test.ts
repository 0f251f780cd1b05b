import { describe, expect, it } from "vitest";
import { chairDepth, chairScale, rankOf } from "../../src/voicing/ranking.ts";

describe("cost and chair cost in one number", () => {
  it("never let chairs outweigh a point of cost, with 24 players of the last chair on top", () => {
    // 24 · 3 · 12 = 864.
    expect(24 * rankOf(0, 3, 0)).toBe(864);
    expect(24 * rankOf(0, 3, 0)).toBeLessThan(chairScale);
  });

  it("let lower chairs play lower: a step down saves as much as the chair is low", () => {
    expect(rankOf(0, 3, 4) - rankOf(0, 3, 5)).toBe(3);
    expect(rankOf(0, 0, 0)).toBe(0);
    expect(rankOf(7, 2, chairDepth)).toBe(7 * chairScale);
  });
});
