import { describe, expect, it } from "vitest";
import { mud, mudBetween, mudVerdict } from "../../src/acoustics/mud.ts";
import { roughness } from "../../src/acoustics/roughness.ts";
import { SETHARES_MINIMUM } from "../../src/acoustics/roughness-sethares.ts";
import { harmonics, hzOf } from "./support/sounds.ts";

describe("mud", () => {
  it("of one note or of unisons is nothing", () => {
    expect(mud([])).toEqual({ pairs: [], worst: null, value: 0, verdict: "clear" });
    expect(mud([hzOf(40), hzOf(40), hzOf(40.2)]).pairs).toHaveLength(0);
  });

  it("looks at neighbours only, from the bottom up, in any order of input", () => {
    const stack = [36, 40, 46, 50].map(hzOf);
    const { pairs, worst, value } = mud([...stack].reverse());
    expect(pairs.map(({ low }) => low)).toEqual(stack.slice(0, 3));
    expect(value).toBe(worst!.value);
    expect(Math.max(...pairs.map((pair) => pair.value))).toBe(value);
  });

  it("is Sethares' roughness between two stock notes where they lie within an ERB", () => {
    const stock = (midi: number) => harmonics(hzOf(midi), 6, (harmonic) => 0.88 ** (harmonic - 1));
    for (const [low, high] of [
      [36, 40],
      [40, 43],
      [57, 58],
    ] as const)
      expect(mudBetween(hzOf(low), hzOf(high))).toBeCloseTo(
        roughness([stock(low), stock(high)], SETHARES_MINIMUM).between,
        9,
      );
  });

  it("falls when an interval moves up an octave", () => {
    for (const semitones of [1, 2, 3, 4, 5, 7])
      for (const low of [36, 43, 48])
        expect(mudBetween(hzOf(low + 12), hzOf(low + 12 + semitones))).toBeLessThan(
          mudBetween(hzOf(low), hzOf(low + semitones)),
        );
  });

  it("has no jump where the fundamentals come an ERB apart", () => {
    const low = hzOf(36);
    const values = Array.from({ length: 600 }, (_none, step) =>
      mudBetween(low, hzOf(40 + step / 100)),
    );
    values
      .slice(1)
      .forEach((value, index) => expect(Math.abs(value - values[index]!)).toBeLessThan(0.01));
  });

  it("is called by its value", () => {
    expect([0, 0.69, 0.7, 0.86, 0.87, 2].map(mudVerdict)).toEqual([
      "clear",
      "clear",
      "at the limit",
      "at the limit",
      "muddy",
      "muddy",
    ]);
  });
});
