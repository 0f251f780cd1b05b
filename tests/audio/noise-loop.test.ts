import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { NOISE_LOOP_FRAMES, noiseLoop } from "../../src/audio/noise-loop.ts";
import { bandPower, joined, powerToDb, rms, spectrumOf } from "./support/fourier.ts";

const rate = 48000 as Hertz;
const colour = { low: 1000 as Hertz, high: 4000 as Hertz };

describe("the noise loop", () => {
  const loop = noiseLoop(colour, rate, 3);

  it("has unit rms and is the same for the same seed only", () => {
    expect(loop).toHaveLength(NOISE_LOOP_FRAMES);
    expect(rms(loop)).toBeCloseTo(1, 5);
    expect(noiseLoop(colour, rate, 3)).toEqual(loop);
    expect(noiseLoop(colour, rate, 4)).not.toEqual(loop);
  });

  it("lies in its band: two octaves outside it is 12 dB softer or more", () => {
    const spectrum = spectrumOf(loop, rate);
    const density = (hz: number): number =>
      powerToDb(bandPower(spectrum, 0.9 * hz, 1.1 * hz) / (0.2 * hz));
    expect(density(2000) - density(250)).toBeGreaterThan(12);
    expect(density(2000) - density(16000)).toBeGreaterThan(12);
  });

  it("runs into itself without a seam: no step at the end is larger than inside", () => {
    const twice = joined(loop, loop);
    let largest = 0;
    for (let i = 1; i < loop.length; i++)
      largest = Math.max(largest, Math.abs(loop[i]! - loop[i - 1]!));
    const seam = Math.abs(twice[loop.length]! - twice[loop.length - 1]!);
    expect(seam).toBeLessThanOrEqual(largest);
  });
});
