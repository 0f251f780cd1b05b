import { describe, expect, it } from "vitest";
import { seededChance } from "../../src/base/index.ts";

/** The generator as its definition states it, in whole numbers without any limit. */
function* mulberryByDefinition(seed: number): Generator<number> {
  const wrap = (value: bigint) => BigInt.asUintN(32, value);
  let state = wrap(BigInt(seed));
  for (;;) {
    state = wrap(state + 0x6d2b79f5n);
    let mixed = wrap((state ^ (state >> 15n)) * (1n | state));
    mixed ^= wrap(mixed + wrap((mixed ^ (mixed >> 7n)) * (61n | mixed)));
    yield Number(mixed ^ (mixed >> 14n)) / 2 ** 32;
  }
}

describe("a seeded sequence", () => {
  // T. Ettinger's mulberry32, reckoned a second time with big integers.
  it.each([0, 1, 7, 123456789, 0xffffffff])("follows its definition from seed %i", (seed) => {
    const chance = seededChance(seed);
    const defined = mulberryByDefinition(seed);
    for (let n = 0; n < 1000; n++) expect(chance()).toBe(defined.next().value);
  });

  it("stays from 0 to below 1, with the mean and spread of an even draw", () => {
    const chance = seededChance(3);
    const draws = Array.from({ length: 20000 }, () => chance());
    expect(Math.min(...draws)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...draws)).toBeLessThan(1);
    const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length;
    const variance = draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / draws.length;
    // Four standard errors of 20,000 even draws.
    expect(Math.abs(mean - 1 / 2)).toBeLessThan(0.0082);
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(0.0022);
  });

  it("repeats from the same seed and differs from another", () => {
    const [a, b, c] = [seededChance(5), seededChance(5), seededChance(6)];
    const draw = (chance: () => number) => Array.from({ length: 8 }, chance);
    const first = draw(a);
    expect(draw(b)).toEqual(first);
    expect(draw(c)).not.toEqual(first);
  });
});
