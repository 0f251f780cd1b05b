import { describe, expect, it } from "vitest";
import type { Hertz, Seconds } from "../../src/base/index.ts";
import { StruckVoice } from "../../src/audio/struck-voice.ts";
import type { StruckMaterial } from "../../src/audio/struck-voice.ts";
import { NOISE_LOOP_FRAMES } from "../../src/audio/noise-loop.ts";
import { clickLevel } from "./support/click-level.ts";
import { peak, rms, toDb } from "./support/fourier.ts";

const rate = 48000 as Hertz;
const material: StruckMaterial = {
  modes: [{ hz: 220 as Hertz, peak: 0.5, t60: 4, phase: 0 }],
  noise: new Float32Array(NOISE_LOOP_FRAMES),
  noisePeak: 0,
  noiseT60: 0.1 as Seconds,
  rise: 0.01 as Seconds,
  duration: 1 as Seconds,
  release: 0.1 as Seconds,
};
const render = (more: Partial<StruckMaterial> = {}): Float32Array => {
  const voice = new StruckVoice({ ...material, ...more }, 3, rate);
  voice.renderTo(Infinity);
  return voice.samples;
};

describe("a struck voice", () => {
  it("rises, rings as its modes do, and is stopped without a click", () => {
    const samples = render();
    expect(Math.abs(samples[0]!)).toBe(0);
    const decay = toDb(rms(samples, 4800, 9600) / rms(samples, 28800, 33600));
    expect(decay).toBeCloseTo((60 * 0.5) / 4, 1);
    expect(peak(samples, samples.length - 64)).toBeLessThan(1e-4);
    expect(clickLevel(samples, rate)).toBeLessThan(-60);
  });

  it("has the noise of the stroke at its start only", () => {
    const noise = new Float32Array(NOISE_LOOP_FRAMES).map((_, i) => (i % 2 ? 1 : -1));
    const samples = render({ modes: [], noise, noisePeak: 0.1 });
    expect(rms(samples, 480, 960)).toBeGreaterThan(10 * rms(samples, 4800, 5280));
    expect(rms(samples, 24000, 25000)).toBe(0);
  });

  it("is the same rendered bit by bit", () => {
    const voice = new StruckVoice(material, 3, rate);
    for (let frame = 0; frame < voice.samples.length + 999; frame += 999) voice.renderTo(frame);
    expect(voice.samples).toEqual(render());
  });
});
