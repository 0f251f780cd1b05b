import { describe, expect, it } from "vitest";
import { loudnessIso5322 } from "../../src/acoustics/iso532-2-loudness.ts";
import { channelGrowth } from "../../src/acoustics/iso532-2-specific-loudness.ts";
import {
  partialLoudness,
  specificPartialLoudness,
  splitExcitation,
} from "../../src/acoustics/mgb1997-partial-loudness.ts";
import type { Hertz } from "../../src/base/index.ts";
import { plainNote, sine } from "./support/sounds.ts";

describe("partial loudness", () => {
  it("of silence is nothing", () => {
    expect(partialLoudness([], plainNote(262, 70))).toBe(0);
    expect(specificPartialLoudness(0, 5, 1000 as Hertz, channelGrowth(1000 as Hertz))).toBe(0);
  });

  it("of one ear is two thirds of both", () => {
    const [signal, rest] = [plainNote(262, 70), plainNote(131, 70)];
    const ratio = partialLoudness(signal, rest) / partialLoudness(signal, rest, { ears: "one" });
    expect(ratio).toBeCloseTo(1.5, 12);
  });

  it("is hardly touched by a sound far away in pitch and much by one near by", () => {
    const tone = [sine(1000, 60)];
    const alone = loudnessIso5322(tone);
    expect(partialLoudness(tone, [sine(8000, 60)]) / alone).toBeGreaterThan(0.95);
    expect(partialLoudness(tone, [sine(900, 70)]) / alone).toBeLessThan(0.7);
  });

  it("does not depend on the order of partials", () => {
    const [signal, rest] = [plainNote(262, 70), plainNote(131, 70)];
    expect(partialLoudness([...signal].reverse(), [...rest].reverse())).toBe(
      partialLoudness(signal, rest),
    );
  });
});

describe("the excitation of a part and of the rest", () => {
  it("adds up to that of the whole", () => {
    const centres = Float64Array.of(200, 500, 1000, 3000);
    const [one, other] = [plainNote(262, 70), plainNote(131, 80)];
    const parts = splitExcitation(one, other, centres);
    const whole = splitExcitation([...one, ...other], [], centres);
    centres.forEach((_hz, index) => {
      const sum = parts.signal[index]! + parts.noise[index]!;
      expect(sum / whole.signal[index]!).toBeCloseTo(1, 12);
    });
  });
});
