import { describe, expect, it } from "vitest";
import { pairMemory } from "../../src/acoustics/pair-memory.ts";

describe("a memory of pairs", () => {
  it("reckons every pair once, far numbers as well", () => {
    const memory = pairMemory();
    let reckoned = 0;
    const ask = (first: number, second: number): number =>
      memory(first, second, () => {
        reckoned += 1;
        return first * 1000 + second;
      });
    expect(ask(1, 2)).toBe(1002);
    expect(ask(700, 3)).toBe(700003);
    expect(ask(1, 2)).toBe(1002);
    expect(ask(2, 1)).toBe(2001);
    expect(ask(700, 3)).toBe(700003);
    expect(reckoned).toBe(3);
  });

  it("remembers a value of nothing", () => {
    const memory = pairMemory();
    expect(memory(0, 0, () => 0)).toBe(0);
    expect(memory(0, 0, () => 5)).toBe(0);
  });
});
