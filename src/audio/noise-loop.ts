import { seededChance } from "../base/index.ts";
import type { Count, Hertz } from "../base/index.ts";
import type { NoiseColour } from "./noise-colour-table.ts";

/** Frames in a noise loop; a power of two. At 48 kHz the loop lasts 0.34 s. */
export const NOISE_LOOP_FRAMES = 16384;
/** Passes of each filter, 6 dB an octave each; steeper above, where it would be heard as hiss. */
const LOW_PASSES = 4;
const HIGH_PASSES = 2;

/**
 * A loop of noise with unit rms whose end runs into its start without a seam: every filter runs
 * through the loop once to settle and a second time to be heard.
 * @param colour - band of the noise; it falls 12 dB an octave below it and 24 above
 * @param sampleRate - Hz
 * @param seed - seed of the noise
 * @returns NOISE_LOOP_FRAMES samples, rms 1
 * @source one-pole filters matched at their corner: common practice, no single source
 */
export function noiseLoop(colour: NoiseColour, sampleRate: Hertz, seed: Count): Float32Array {
  const chance = seededChance(seed);
  const loop = new Float64Array(NOISE_LOOP_FRAMES);
  for (let i = 0; i < NOISE_LOOP_FRAMES; i++) loop[i] = chance() - 0.5;
  for (let pass = 0; pass < LOW_PASSES; pass++) smooth(loop, colour.high, sampleRate);
  for (let pass = 0; pass < HIGH_PASSES; pass++) sharpen(loop, colour.low, sampleRate);
  let power = 0;
  for (let i = 0; i < NOISE_LOOP_FRAMES; i++) power += loop[i]! * loop[i]!;
  const scale = Math.sqrt(NOISE_LOOP_FRAMES / power);
  const noise = new Float32Array(NOISE_LOOP_FRAMES);
  for (let i = 0; i < NOISE_LOOP_FRAMES; i++) noise[i] = scale * loop[i]!;
  return noise;
}

/** Low-pass, in place, around the loop. */
function smooth(outLoop: Float64Array, corner: Hertz, sampleRate: Hertz): void {
  const share = 1 - Math.exp((-2 * Math.PI * corner) / sampleRate);
  let state = 0;
  for (let i = 0; i < NOISE_LOOP_FRAMES; i++) state += share * (outLoop[i]! - state);
  for (let i = 0; i < NOISE_LOOP_FRAMES; i++) {
    state += share * (outLoop[i]! - state);
    outLoop[i] = state;
  }
}

/** High-pass, in place, around the loop. */
function sharpen(outLoop: Float64Array, corner: Hertz, sampleRate: Hertz): void {
  const share = 1 - Math.exp((-2 * Math.PI * corner) / sampleRate);
  let state = 0;
  for (let i = 0; i < NOISE_LOOP_FRAMES; i++) state += share * (outLoop[i]! - state);
  for (let i = 0; i < NOISE_LOOP_FRAMES; i++) {
    state += share * (outLoop[i]! - state);
    outLoop[i] = outLoop[i]! - state;
  }
}
