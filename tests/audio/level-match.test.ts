import { describe, expect, it } from "vitest";
import type { Db, Hertz } from "../../src/base/index.ts";
import type { Lufs } from "../../src/audio/audio-units.ts";
import { dbToGain } from "../../src/audio/level-calibration.ts";
import { MATCH_TARGET_LUFS, levelMatchGain } from "../../src/audio/level-match.ts";
import { integratedLoudness } from "../../src/audio/loudness-meter.ts";
import { sine } from "./support/fourier.ts";

describe("level matching", () => {
  it("brings unlike sounds to one loudness within 0.2 LU", () => {
    const rate = 48000 as Hertz;
    for (const tone of [sine(rate, 3, 110, 0.4), sine(rate, 3, 3000, 0.01)]) {
      const gain = dbToGain(levelMatchGain(integratedLoudness([tone, tone], rate)));
      const matched = tone.map((x) => x * gain);
      const loudness = integratedLoudness([matched, matched], rate);
      expect(Math.abs(loudness - MATCH_TARGET_LUFS)).toBeLessThan(0.2);
    }
  });

  it("leaves silence alone", () => expect(levelMatchGain(-Infinity as Lufs)).toBe(0 as Db));
});
