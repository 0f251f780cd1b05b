import { describe, expect, it } from "vitest";
import { spectralCentroid } from "../../src/acoustics/centroid.ts";
import { harmonics, sine } from "./support/sounds.ts";

describe("the spectral centroid", () => {
  // Closed form for 20 harmonics with pressures 1/n: 20/H(20) and H(20)/H2(20).
  it("of 20 harmonics 1/n is 5.5590 f0 by pressure and 2.2540 f0 by power", () => {
    const note = harmonics(100, 20, (harmonic) => 1 / harmonic);
    expect(spectralCentroid(note, "amplitude") / 100).toBeCloseTo(5.559, 4);
    expect(spectralCentroid(note, "power") / 100).toBeCloseTo(2.254, 4);
  });

  it("of one partial is that partial", () => {
    expect(spectralCentroid([sine(440, 60)], "power")).toBe(440);
  });

  it("does not depend on order, nor on the level of the whole", () => {
    const note = [sine(440, 60), sine(880, 50), sine(1320, 55)];
    const turned = [...note].reverse();
    expect(spectralCentroid(turned, "amplitude")).toBe(spectralCentroid(note, "amplitude"));
    const louder = note.map(({ hz, dbSpl }) => sine(hz, dbSpl + 20));
    expect(spectralCentroid(louder, "power")).toBeCloseTo(spectralCentroid(note, "power"), 9);
  });

  it("does not exist for silence", () => {
    expect(() => spectralCentroid([], "power")).toThrow(/silent sound has no centroid/);
    expect(() => spectralCentroid([sine(440, -Infinity)], "power")).toThrow(RangeError);
  });
});
