import type { Hertz, Ratio, Seconds } from "../base/index.ts";
import type { Frames } from "./audio-units.ts";
import { NOISE_LOOP_FRAMES } from "./noise-loop.ts";
import type { NoteVoice } from "./note-voice.ts";
import { RingingModes } from "./ringing-modes.ts";
import type { Mode } from "./ringing-modes.ts";

/** Frames rendered at a time. */
const STEP_FRAMES = 64;

/** What a struck voice plays from. */
export interface StruckMaterial {
  readonly modes: readonly Mode[];
  /** Noise of unit rms, NOISE_LOOP_FRAMES long. */
  readonly noise: Float32Array;
  /** rms amplitude of the stroke's noise at its loudest, digital units. */
  readonly noisePeak: Ratio;
  /** Time in which the stroke's noise falls by 60 dB. */
  readonly noiseT60: Seconds;
  /** From nothing to the full amplitude of the modes. */
  readonly rise: Seconds;
  /** When the damper falls or the string is stopped. */
  readonly duration: Seconds;
  readonly release: Seconds;
}

/** A hammered, plucked or beaten sound: ringing modes and a burst of noise. */
export class StruckVoice implements NoteVoice {
  readonly samples: Float32Array;
  private readonly bank: RingingModes;
  private rendered: Frames = 0;
  private noiseAt: number;

  /**
   * @param material - modes, noise and times
   * @param seed - where in the noise loop to begin
   * @param sampleRate - Hz
   */
  constructor(
    private readonly material: StruckMaterial,
    seed: number,
    private readonly sampleRate: Hertz,
  ) {
    const seconds = material.duration + material.release;
    const steps = Math.ceil((seconds * sampleRate) / STEP_FRAMES);
    this.samples = new Float32Array(steps * STEP_FRAMES);
    this.bank = new RingingModes(material.modes, sampleRate);
    this.noiseAt = seed % NOISE_LOOP_FRAMES;
  }

  /** {@inheritDoc NoteVoice.renderTo} */
  renderTo(frame: Frames): void {
    const end = Math.min(frame, this.samples.length);
    while (this.rendered < end) this.renderStep();
  }

  private renderStep(): void {
    const from = this.rendered;
    const to = from + STEP_FRAMES;
    this.bank.addTo(this.samples, from, to);
    this.addNoise(from, to);
    this.shape(from, to);
    this.rendered = to;
  }

  private addNoise(from: Frames, to: Frames): void {
    const { noise, noisePeak, noiseT60 } = this.material;
    let gain = noisePeak * 10 ** ((-3 * from) / (noiseT60 * this.sampleRate));
    if (gain < 1e-6) return;
    const softer = 10 ** (-3 / (noiseT60 * this.sampleRate));
    for (let i = from; i < to; i++) {
      this.samples[i] = this.samples[i]! + gain * noise[this.noiseAt]!;
      this.noiseAt = (this.noiseAt + 1) & (NOISE_LOOP_FRAMES - 1);
      gain *= softer;
    }
  }

  /** Rise at the stroke and fall at the damper; nothing to do between the two. */
  private shape(from: Frames, to: Frames): void {
    const { rise, duration, release } = this.material;
    const riseFrames = rise * this.sampleRate;
    const stop = duration * this.sampleRate;
    if (from >= riseFrames && to <= stop) return;
    const fallFrames = release * this.sampleRate;
    for (let i = from; i < to; i++) {
      const up = halfSine(i / riseFrames);
      const down = 1 - halfSine((i - stop) / fallFrames);
      this.samples[i] = this.samples[i]! * up * down;
    }
  }
}

function halfSine(share: number): number {
  if (share <= 0) return 0;
  if (share >= 1) return 1;
  return 0.5 - 0.5 * Math.cos(Math.PI * share);
}
