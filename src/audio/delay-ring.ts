import type { Ratio } from "../base/index.ts";
import type { Frames } from "./audio-units.ts";

/** The recent past of a signal, to be heard again later. */
export class DelayRing {
  private readonly past: Float32Array;
  private readonly mask: number;
  private head = 0;

  /** @param frames - how far back it must reach, including one block */
  constructor(frames: Frames) {
    let size = 64;
    while (size < frames) size *= 2;
    this.past = new Float32Array(size);
    this.mask = size - 1;
  }

  /**
   * Takes the next frames.
   * @param samples - where they are
   * @param from - index of the first
   * @param frames - how many
   */
  write(samples: Float32Array, from: Frames, frames: Frames): void {
    const { past, mask } = this;
    const head = this.head;
    for (let i = 0; i < frames; i++) past[(head + i) & mask] = samples[from + i]!;
    this.head = (head + frames) & mask;
  }

  /**
   * Adds the latest frames as they were some time ago.
   * @param out - array added to
   * @param from - its first index
   * @param frames - how many, the same as were written last
   * @param delay - frames back from the time they were written
   * @param gain - factor
   */
  addDelayed(out: Float32Array, from: Frames, frames: Frames, delay: Frames, gain: Ratio): void {
    const { past, mask } = this;
    const start = (this.head - frames - delay) & mask;
    const untilEnd = Math.min(frames, past.length - start);
    for (let i = 0; i < untilEnd; i++) out[from + i] = out[from + i]! + gain * past[start + i]!;
    for (let i = untilEnd; i < frames; i++)
      out[from + i] = out[from + i]! + gain * past[start + i - past.length]!;
  }
}
