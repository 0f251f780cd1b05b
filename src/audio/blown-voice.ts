import type { Count, Hertz, Seconds } from "../base/index.ts";
import type { Articulation } from "../band/index.ts";
import type { Frames } from "./audio-units.ts";
import { LOUDEST_STEP } from "./dynamic-steps.ts";
import type { DynamicPosition } from "./dynamic-steps.ts";
import { dbToGain } from "./level-calibration.ts";
import { LevelMotion } from "./level-motion.ts";
import { noteShape } from "./note-shape.ts";
import type { NoteShape } from "./note-shape.ts";
import { dynamicOnCurve } from "./note-spec.ts";
import type { NoteSpec } from "./note-spec.ts";
import type { NoteVoice } from "./note-voice.ts";
import { NOISE_LOOP_FRAMES } from "./noise-loop.ts";
import { PitchMotion } from "./pitch-motion.ts";
import type { Wavetable } from "./wavetable.ts";

/** Pitch, level and brightness are set every so many frames and run evenly between. */
const STEP_FRAMES = 64;
/** How far the noise of the attack rises above the breath of the steady note. */
const BITE_OVER_BREATH_DB = 12;

/** What a blown voice plays from. */
export interface BlownMaterial {
  readonly fundamental: Hertz;
  readonly articulation: Articulation;
  /** Table of a whole step on the row of dynamics, all of one length. */
  readonly tableAt: (step: Count) => Wavetable;
  /** Noise of unit rms, NOISE_LOOP_FRAMES long. */
  readonly noise: Float32Array;
}

/**
 * A wind player's note: two neighbouring tables of the dynamic ladder are crossfaded so that
 * brightness follows loudness inside the note, the read-out speed follows the player's pitch, the
 * level strays a little, and breath is added in proportion to the tone.
 */
export class BlownVoice implements NoteVoice {
  readonly samples: Float32Array;
  private readonly shape: NoteShape;
  private readonly motion: PitchMotion;
  private readonly shimmer: LevelMotion;
  private readonly breath: number;
  private readonly bite: number;
  private rendered: Frames = 0;
  private phase: number;
  private increment: number;
  private noiseAt: number;
  private position: number;
  private gain = 0;
  private noiseGain = 0;
  /** Where the gains of the running step begin and end. */
  private readonly ramps = { low: 0, lowTo: 0, high: 0, highTo: 0, noise: 0 };

  /**
   * @param spec - the note
   * @param material - tables, noise and articulation of its instrument at its pitch
   * @param sampleRate - Hz
   */
  constructor(
    private readonly spec: NoteSpec,
    private readonly material: BlownMaterial,
    private readonly sampleRate: Hertz,
  ) {
    const { articulation } = material;
    const steady = dynamicOnCurve(spec.curve, 0 as Seconds);
    this.shape = noteShape(articulation, spec.duration, (at) => this.rmsAt(at), steady);
    const steps = Math.ceil((this.shape.length * sampleRate) / STEP_FRAMES);
    this.samples = new Float32Array(steps * STEP_FRAMES);
    const step = (STEP_FRAMES / sampleRate) as Seconds;
    this.motion = new PitchMotion(articulation, spec.seed, step);
    this.shimmer = new LevelMotion(spec.seed, step);
    this.breath = dbToGain(articulation.noiseDb);
    this.bite = this.breath * 10 ** (BITE_OVER_BREATH_DB / 20) * this.rmsAt(steady);
    const size = material.tableAt(Math.floor(steady)).period.length - 1;
    this.phase = ((spec.seed % 65521) / 65521) * size;
    this.noiseAt = spec.seed % NOISE_LOOP_FRAMES;
    this.position = this.heardAt(0 as Seconds);
    this.increment = this.nextIncrement(size);
  }

  /** {@inheritDoc NoteVoice.renderTo} */
  renderTo(frame: Frames): void {
    const end = Math.min(frame, this.samples.length);
    while (this.rendered < end) this.renderStep();
  }

  private renderStep(): void {
    const time = ((this.rendered + STEP_FRAMES) / this.sampleRate) as Seconds;
    const gain = this.shape.gainAt(time) * this.shimmer.next();
    const from = this.position;
    const to = this.heardAt(time);
    // The two tables of this step; the dynamic is kept between them until the next.
    const lower =
      to >= from ? Math.min(LOUDEST_STEP - 1, Math.floor(from)) : Math.max(0, Math.ceil(from) - 1);
    const before = from - lower;
    const after = Math.min(1, Math.max(0, to - lower));
    const isUpper = before + after === 2;
    const isAlone = isUpper || before + after === 0;
    const low = this.material.tableAt(isUpper ? lower + 1 : lower);
    const high = isAlone ? low : this.material.tableAt(lower + 1);
    this.ramps.low = isAlone ? this.gain : this.gain * (1 - before);
    this.ramps.lowTo = isAlone ? gain : gain * (1 - after);
    this.ramps.high = this.gain * before;
    this.ramps.highTo = gain * after;
    this.ramps.noise = this.noiseGain;
    const level = low.rms + after * (high.rms - low.rms);
    this.noiseGain = this.breath * level * gain + this.bite * this.shape.biteAt(time);
    const increment = this.nextIncrement(low.period.length - 1);
    if (isAlone) this.playOne(low.period, increment);
    else this.playTwo(low.period, high.period, increment);
    this.position = lower + after;
    this.gain = gain;
    this.increment = increment;
    this.rendered += STEP_FRAMES;
  }

  private heardAt(time: Seconds): number {
    return Math.max(0, dynamicOnCurve(this.spec.curve, time) - this.shape.darkerAt(time));
  }

  private nextIncrement(size: number): number {
    return (this.motion.next() * this.material.fundamental * size) / this.sampleRate;
  }

  private playOne(table: Float32Array, increment: number): void {
    const { samples, ramps } = this;
    const { noise } = this.material;
    const size = table.length - 1;
    const faster = (increment - this.increment) / STEP_FRAMES;
    const louder = (ramps.lowTo - ramps.low) / STEP_FRAMES;
    const noisier = (this.noiseGain - ramps.noise) / STEP_FRAMES;
    let { increment: speed, phase, noiseAt } = this;
    let { low: gain, noise: noiseGain } = ramps;
    for (let i = this.rendered, end = i + STEP_FRAMES; i < end; i++) {
      const index = phase | 0;
      const here = table[index]!;
      samples[i] =
        gain * (here + (phase - index) * (table[index + 1]! - here)) + noiseGain * noise[noiseAt]!;
      gain += louder;
      noiseGain += noisier;
      noiseAt = (noiseAt + 1) & (NOISE_LOOP_FRAMES - 1);
      speed += faster;
      phase += speed;
      if (phase >= size) phase -= size;
    }
    this.phase = phase;
    this.noiseAt = noiseAt;
  }

  private playTwo(low: Float32Array, high: Float32Array, increment: number): void {
    const { samples, ramps } = this;
    const { noise } = this.material;
    const size = low.length - 1;
    const faster = (increment - this.increment) / STEP_FRAMES;
    const lowLouder = (ramps.lowTo - ramps.low) / STEP_FRAMES;
    const highLouder = (ramps.highTo - ramps.high) / STEP_FRAMES;
    const noisier = (this.noiseGain - ramps.noise) / STEP_FRAMES;
    let { increment: speed, phase, noiseAt } = this;
    let { low: lowGain, high: highGain, noise: noiseGain } = ramps;
    for (let i = this.rendered, end = i + STEP_FRAMES; i < end; i++) {
      const index = phase | 0;
      const here = lowGain * low[index]! + highGain * high[index]!;
      const next = lowGain * low[index + 1]! + highGain * high[index + 1]!;
      samples[i] = here + (phase - index) * (next - here) + noiseGain * noise[noiseAt]!;
      lowGain += lowLouder;
      highGain += highLouder;
      noiseGain += noisier;
      noiseAt = (noiseAt + 1) & (NOISE_LOOP_FRAMES - 1);
      speed += faster;
      phase += speed;
      if (phase >= size) phase -= size;
    }
    this.phase = phase;
    this.noiseAt = noiseAt;
  }

  private rmsAt(position: DynamicPosition): number {
    const lower = Math.min(LOUDEST_STEP - 1, Math.max(0, Math.floor(position)));
    const share = position - lower;
    const low = share === 1 ? 0 : this.material.tableAt(lower).rms;
    return low * (1 - share) + (share === 0 ? 0 : share * this.material.tableAt(lower + 1).rms);
  }
}
