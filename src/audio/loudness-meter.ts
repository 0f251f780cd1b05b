import type { Count, Hertz, Ratio } from "../base/index.ts";
import type { Frames, Lufs } from "./audio-units.ts";
import { kWeighting } from "./k-weighting.ts";
import type { Biquad } from "./k-weighting.ts";

const ABSOLUTE_GATE = -70;
const RELATIVE_GATE = -10;
const OFFSET = -0.691;
/** A gating block of 400 ms is four slices, a short-term window of 3 s is thirty. */
const SLICE_SECONDS = 0.1;
const MOMENTARY_SLICES = 4;
const SHORT_TERM_SLICES = 30;

/** Weight of a front channel, and of a surround channel. */
const FRONT = 1;
const SURROUND = 1.41;

/**
 * Programme loudness as broadcasters measure it: K-weighted, gated, in LUFS.
 * @source ITU-R BS.1770-5, annex 1; EBU Tech 3341 (momentary 400 ms, short-term 3 s)
 */
export class LoudnessMeter {
  private readonly filters: readonly ChannelFilter[];
  private readonly weights: readonly Ratio[];
  private readonly sliceFrames: Frames;
  private readonly slices: number[] = [];
  private filled: Frames = 0;
  private power = 0;

  /**
   * @param sampleRate - Hz
   * @param channels - 1 mono, 2 left and right, 5 left, right, centre and both surrounds
   */
  constructor(sampleRate: Hertz, channels: Count) {
    const sections = kWeighting(sampleRate);
    this.filters = Array.from({ length: channels }, () => new ChannelFilter(sections));
    this.weights = Array.from({ length: channels }, (_, c) => (c < 3 ? FRONT : SURROUND));
    this.sliceFrames = Math.round(SLICE_SECONDS * sampleRate);
  }

  /**
   * Takes the next frames.
   * @param channels - one array a channel, all of one length
   */
  push(channels: readonly Float32Array[]): void {
    const frames = channels[0]!.length;
    for (let from = 0; from < frames;) {
      const to = Math.min(frames, from + this.sliceFrames - this.filled);
      this.filters.forEach((filter, c) => {
        this.power += this.weights[c]! * filter.power(channels[c]!, from, to);
      });
      this.filled += to - from;
      from = to;
      if (this.filled === this.sliceFrames) this.closeSlice();
    }
  }

  /** Loudness of the last 400 ms; minus infinity before there are as many. */
  momentary(): Lufs {
    return toLufs(this.meanBefore(this.slices.length, MOMENTARY_SLICES));
  }

  /** Loudness of the last 3 s; minus infinity before there are as many. */
  shortTerm(): Lufs {
    return toLufs(this.meanBefore(this.slices.length, SHORT_TERM_SLICES));
  }

  /** Gated loudness of everything so far; minus infinity when nothing passed the gates. */
  integrated(): Lufs {
    const blocks = this.slices
      .map((_, s) => this.meanBefore(s + 1, MOMENTARY_SLICES))
      .filter((power) => toLufs(power) > ABSOLUTE_GATE);
    const gate = toLufs(mean(blocks)) + RELATIVE_GATE;
    return toLufs(mean(blocks.filter((power) => toLufs(power) > gate)));
  }

  private closeSlice(): void {
    this.slices.push(this.power / this.sliceFrames);
    this.power = 0;
    this.filled = 0;
  }

  /** Mean power of a window of slices that ends before a slice; 0 when it does not fit yet. */
  private meanBefore(end: Count, length: Count): number {
    if (end < length) return 0;
    let sum = 0;
    for (let s = end - length; s < end; s++) sum += this.slices[s]!;
    return sum / length;
  }
}

class ChannelFilter {
  private readonly state = new Float64Array(4);

  constructor(private readonly sections: readonly [Biquad, Biquad]) {}

  /** Sum of squares of the weighted signal. */
  power(samples: Float32Array, from: Frames, to: Frames): number {
    const [shelf, highPass] = this.sections;
    let [s1, s2, h1, h2] = this.state as unknown as [number, number, number, number];
    let sum = 0;
    for (let i = from; i < to; i++) {
      const x = samples[i]!;
      const y = shelf.b0 * x + s1;
      s1 = shelf.b1 * x - shelf.a1 * y + s2;
      s2 = shelf.b2 * x - shelf.a2 * y;
      const z = highPass.b0 * y + h1;
      h1 = highPass.b1 * y - highPass.a1 * z + h2;
      h2 = highPass.b2 * y - highPass.a2 * z;
      sum += z * z;
    }
    this.state.set([s1, s2, h1, h2]);
    return sum;
  }
}

function toLufs(power: number): Lufs {
  return (OFFSET + 10 * Math.log10(power)) as Lufs;
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/**
 * Integrated loudness of a whole recording.
 * @param channels - one array a channel: left, right, centre, left and right surround
 * @param sampleRate - Hz
 * @returns LUFS; minus infinity for silence or less than 400 ms
 * @source ITU-R BS.1770-5, annex 1
 */
export function integratedLoudness(channels: readonly Float32Array[], sampleRate: Hertz): Lufs {
  const meter = new LoudnessMeter(sampleRate, channels.length);
  meter.push(channels);
  return meter.integrated();
}
