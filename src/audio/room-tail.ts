import type { Hertz, Ratio } from "../base/index.ts";
import type { Frames } from "./audio-units.ts";
import { TAIL_DELAYS, TAIL_T60, TAIL_T60_HIGH } from "./room-table.ts";

/** Frames handled at once: fewer than the shortest delay line holds at any usual rate. */
const CHUNK_FRAMES = 128;
const LINES = TAIL_DELAYS.length;

/**
 * The tail of a small room: eight delay lines that feed each other by a Householder reflection
 * (which keeps energy), each losing what the reverberation time asks, highs sooner. Even lines are
 * fed from and heard on the left, odd ones on the right.
 * @source J.-M. Jot and A. Chaigne, Digital Delay Networks for Designing Artificial Reverberators,
 * 1991
 */
export class RoomTail {
  private readonly lines: readonly TailLine[];
  private readonly heard = Array.from({ length: LINES }, () => new Float64Array(CHUNK_FRAMES));
  private readonly sum = new Float64Array(CHUNK_FRAMES);
  private gain: number;

  /**
   * @param sampleRate - Hz, 24 kHz or more
   * @param level - rms of the whole tail against that of an even pair of sends
   */
  constructor(sampleRate: Hertz, level: Ratio) {
    this.lines = TAIL_DELAYS.map(
      (delay) => new TailLine(Math.round(delay * sampleRate), sampleRate),
    );
    this.gain = 1;
    this.gain = level / Math.sqrt(this.measuredPower(sampleRate));
    for (const line of this.lines) line.clear();
  }

  /**
   * Adds the tail of the sends to the output.
   * @param send - two arrays, read from index 0
   * @param out - two arrays, added to
   * @param from - first index in `out`
   * @param frames - how many
   */
  addTo(
    send: readonly [Float32Array, Float32Array],
    out: readonly [Float32Array, Float32Array],
    from: Frames,
    frames: Frames,
  ): void {
    for (let done = 0; done < frames; done += CHUNK_FRAMES) {
      const chunk = Math.min(CHUNK_FRAMES, frames - done);
      this.hear(out, from + done, chunk);
      this.feed(send, done, chunk);
    }
  }

  private hear(out: readonly [Float32Array, Float32Array], from: Frames, frames: Frames): void {
    const { sum, gain } = this;
    sum.fill(0);
    for (let n = 0; n < LINES; n++) {
      const heard = this.heard[n]!;
      this.lines[n]!.read(heard, frames);
      const side = out[n & 1]!;
      const sign = n & 2 ? -gain : gain;
      for (let i = 0; i < frames; i++) {
        sum[i] = sum[i]! + heard[i]!;
        side[from + i] = side[from + i]! + sign * heard[i]!;
      }
    }
  }

  private feed(send: readonly [Float32Array, Float32Array], from: Frames, frames: Frames): void {
    const { sum } = this;
    for (let n = 0; n < LINES; n++) {
      const heard = this.heard[n]!;
      const side = send[n & 1]!;
      for (let i = 0; i < frames; i++)
        heard[i] = heard[i]! - (2 / LINES) * sum[i]! + side[from + i]!;
      this.lines[n]!.write(heard, frames);
    }
  }

  /** Power of the answer to one impulse in each send, halved: the factor on an even pair. */
  private measuredPower(sampleRate: Hertz): number {
    const frames = Math.ceil(2 * TAIL_T60 * sampleRate);
    const send = new Float32Array(frames);
    send[0] = 1;
    const left = new Float32Array(frames);
    const right = new Float32Array(frames);
    // The two sides are driven apart, as two unlike players are, then averaged.
    const silence = new Float32Array(frames);
    this.addTo([send, silence], [left, right], 0, frames);
    return left.reduce((sum, x) => sum + x * x, 0) + right.reduce((sum, x) => sum + x * x, 0);
  }
}

/** One delay line with its loss. */
class TailLine {
  private readonly samples: Float64Array;
  private readonly keep: number;
  private readonly take: number;
  private at = 0;
  private state = 0;

  constructor(frames: Frames, sampleRate: Hertz) {
    this.samples = new Float64Array(frames);
    const seconds = frames / sampleRate;
    const middle = 10 ** ((-3 * seconds) / TAIL_T60);
    const high = 10 ** ((-3 * seconds) / TAIL_T60_HIGH);
    // One-pole y += s·(g·x − y): gain g at 0 Hz, g·s/(2 − s) at half the sampling rate.
    const smoothing = (2 * high) / (middle + high);
    this.keep = 1 - smoothing;
    this.take = smoothing * middle;
  }

  clear(): void {
    this.samples.fill(0);
    this.state = 0;
    this.at = 0;
  }

  read(out: Float64Array, frames: Frames): void {
    const size = this.samples.length;
    const first = Math.min(frames, size - this.at);
    this.smooth(out, 0, first, this.at);
    this.smooth(out, first, frames, -first);
    if (Math.abs(this.state) < 1e-20) this.state = 0;
  }

  private smooth(out: Float64Array, from: Frames, to: Frames, shift: Frames): void {
    const { samples, keep, take } = this;
    let { state } = this;
    for (let i = from; i < to; i++) {
      state = keep * state + take * samples[i + shift]!;
      out[i] = state;
    }
    this.state = state;
  }

  write(values: Float64Array, frames: Frames): void {
    const { samples } = this;
    const size = samples.length;
    const first = Math.min(frames, size - this.at);
    for (let i = 0; i < first; i++) samples[this.at + i] = values[i]!;
    for (let i = first; i < frames; i++) samples[i - first] = values[i]!;
    this.at = (this.at + frames) % size;
  }
}
