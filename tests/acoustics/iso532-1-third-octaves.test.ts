import { describe, expect, it } from "vitest";
import { thirdOctaveLevels } from "../../src/acoustics/iso532-1-third-octaves.ts";
import { sine } from "./support/sounds.ts";

describe("third-octave levels of partials", () => {
  it("put a tone at a centre wholly in its band, with skirts beside it", () => {
    const levels = thirdOctaveLevels([sine(1000, 60)]);
    expect(levels).toHaveLength(28);
    expect(levels[16]).toBeCloseTo(60, 9);
    expect(levels[15]).toBeCloseTo(levels[17]!, 6);
    expect(levels[15]).toBeLessThan(45);
    expect(levels[15]).toBeGreaterThan(20);
  });

  it("halve the power at the edge of a band", () => {
    expect(thirdOctaveLevels([sine(1000 * 10 ** 0.05, 60)])[16]).toBeCloseTo(60 - 3.01, 2);
  });

  it("of nothing are silent", () => {
    expect(thirdOctaveLevels([]).every((level) => level === -Infinity)).toBe(true);
  });
});
