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
    this.sum.fill(0);
    for (let n = 0; n < LINES; n++) {
      const gain = n & 2 ? -this.gain : this.gain;
      this.lines[n]!.hear({ sum: this.sum, side: out[n & 1]!, from, frames, gain });
    }
  }

  private feed(send: readonly [Float32Array, Float32Array], from: Frames, frames: Frames): void {
    const { sum } = this;
    for (let i = 0; i < frames; i++) sum[i] = (2 / LINES) * sum[i]!;
    for (let n = 0; n < LINES; n++) this.lines[n]!.feed(sum, send[n & 1]!, from, frames);
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

/** Where a line is heard. */
interface Hearing {
  /** What all lines give, added up. */
  readonly sum: Float64Array;
  /** The channel it is heard in, added to from `from` on. */
  readonly side: Float32Array;
  readonly from: Frames;
  readonly frames: Frames;
  readonly gain: number;
}

/** One delay line with its loss. */
class TailLine {
  private readonly past: Float64Array;
  private readonly heard = new Float64Array(CHUNK_FRAMES);
  private readonly keep: number;
  private readonly take: number;
  private at = 0;
  private state = 0;

  constructor(frames: Frames, sampleRate: Hertz) {
    this.past = new Float64Array(frames);
    const seconds = frames / sampleRate;
    const middle = 10 ** ((-3 * seconds) / TAIL_T60);
    const high = 10 ** ((-3 * seconds) / TAIL_T60_HIGH);
    // One-pole y += s·(g·x − y): gain g at 0 Hz, g·s/(2 − s) at half the sampling rate.
    const smoothing = (2 * high) / (middle + high);
    this.keep = 1 - smoothing;
    this.take = smoothing * middle;
  }

  clear(): void {
    this.past.fill(0);
    this.state = 0;
    this.at = 0;
  }

  /** Takes what went in a whole line ago, with its loss, and adds it to the sum and the channel. */
  hear(hearing: Hearing): void {
    const untilEnd = Math.min(hearing.frames, this.past.length - this.at);
    this.hearStretch(hearing, 0, untilEnd, this.at);
    this.hearStretch(hearing, untilEnd, hearing.frames, -untilEnd);
    if (Math.abs(this.state) < 1e-20) this.state = 0;
  }

  /** Puts in what the line gave, less the common part, and what is sent. */
  feed(sum: Float64Array, send: Float32Array, from: Frames, frames: Frames): void {
    const untilEnd = Math.min(frames, this.past.length - this.at);
    const { past, heard, at } = this;
    for (let i = 0; i < untilEnd; i++) past[at + i] = heard[i]! - sum[i]! + send[from + i]!;
    for (let i = untilEnd; i < frames; i++)
      past[i - untilEnd] = heard[i]! - sum[i]! + send[from + i]!;
    this.at = (at + frames) % past.length;
  }

  private hearStretch(
    { sum: outSum, side: outSide, from, gain }: Hearing,
    first: number,
    end: number,
    shift: number,
  ): void {
    const { past, heard, keep, take } = this;
    let { state } = this;
    for (let i = first; i < end; i++) {
      state = keep * state + take * past[i + shift]!;
      heard[i] = state;
      outSum[i] = outSum[i]! + state;
      outSide[from + i] = outSide[from + i]! + gain * state;
    }
    this.state = state;
  }
}
