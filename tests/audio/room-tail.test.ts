import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { RoomTail } from "../../src/audio/room-tail.ts";
import { TAIL_T60, TAIL_T60_HIGH } from "../../src/audio/room-table.ts";
import { bandPower, powerToDb, spectrumOf } from "./support/fourier.ts";

function impulseAnswer(rate: number): Float32Array {
  const frames = Math.round(0.7 * rate);
  const click = new Float32Array(frames);
  click[0] = 1;
  const out = [new Float32Array(frames), new Float32Array(frames)] as const;
  new RoomTail(rate as Hertz, 1).addTo([click, click], out, 0, frames);
  return out[0];
}

/** Reverberation time from the slope between two moments, in a band. */
function t60(samples: Float32Array, rate: number, low: number, high: number): number {
  const level = (seconds: number): number =>
    powerToDb(bandPower(spectrumOf(samples, rate, Math.round(seconds * rate), 4096), low, high));
  return (60 * 0.2) / (level(0.04) - level(0.24));
}

describe("the tail of the room", () => {
  it.each([44100, 48000, 96000])("keeps its reverberation time at %d Hz", (rate) => {
    const samples = impulseAnswer(rate);
    expect(t60(samples, rate, 200, 1000) / TAIL_T60).toBeGreaterThan(0.8);
    expect(t60(samples, rate, 200, 1000) / TAIL_T60).toBeLessThan(1.2);
    const high = t60(samples, rate, 0.3 * rate, 0.45 * rate);
    expect(high).toBeLessThan(TAIL_T60);
    expect(high).toBeGreaterThan(0.6 * TAIL_T60_HIGH);
  });

  it("has the power it is asked for", () => {
    const frames = 48000;
    const click = new Float32Array(frames);
    click[0] = 1;
    const out = [new Float32Array(frames), new Float32Array(frames)] as const;
    new RoomTail(48000 as Hertz, 0.5).addTo([click, new Float32Array(frames)], out, 0, frames);
    const power = out[0].reduce((s, x) => s + x * x, 0) + out[1].reduce((s, x) => s + x * x, 0);
    expect(Math.sqrt(power)).toBeCloseTo(0.5, 2);
  });
});
