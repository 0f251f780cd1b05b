import { describe, expect, it } from "vitest";
import { cochlearInput } from "../../src/acoustics/iso532-2-cochlea.ts";
import {
  CHANNEL_CENTRES_HZ,
  excitationAt,
  excitationPattern,
  lowerSideFactors,
} from "../../src/acoustics/iso532-2-excitation.ts";
import { sine } from "./support/sounds.ts";

const peakHz = (pattern: Float64Array): number =>
  CHANNEL_CENTRES_HZ[pattern.indexOf(Math.max(...pattern))]!;

describe("excitation", () => {
  it("has 372 channels from 49 Hz to 15 kHz", () => {
    expect(CHANNEL_CENTRES_HZ).toHaveLength(372);
    expect(CHANNEL_CENTRES_HZ[0]).toBeCloseTo(49, 0);
    expect(CHANNEL_CENTRES_HZ[371]).toBeGreaterThan(14900);
  });

  it("of a tone is greatest at the tone and equals its power there", () => {
    const input = cochlearInput([sine(1000, 60)]);
    const pattern = excitationPattern(input);
    expect(Math.abs(peakHz(pattern) - 1000)).toBeLessThan(10);
    expect(Math.max(...pattern)).toBeCloseTo(input.power[0]!, -4);
    expect(Math.max(...pattern)).toBeLessThanOrEqual(input.power[0]!);
  });

  it("spreads further up at high levels than at low ones", () => {
    const spread = (level: number): number => {
      const input = cochlearInput([sine(1000, level)]);
      const at = excitationAt(input, lowerSideFactors(input), Float64Array.of(1000, 2000));
      return at[1]! / at[0]!;
    };
    expect(spread(90)).toBeGreaterThan(1000 * spread(50));
  });

  it("lets the whole shape the filters of a part", () => {
    const part = cochlearInput([sine(1000, 50)]);
    const whole = cochlearInput([sine(1000, 50), sine(1010, 90)]);
    const alone = lowerSideFactors(part)[0]!;
    expect(lowerSideFactors(whole, part.hz)[0]!).toBeLessThan(alone);
  });
});
