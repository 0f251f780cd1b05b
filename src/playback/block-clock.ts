import type { Hertz, Seconds } from "../base/index.ts";
import type { Frames } from "../audio/index.ts";

/** A block that arrives less than this before its time is too late to be started cleanly. */
const SAFETY_SECONDS = 0.005;
/** Frames: a whole number that rounding lifts by less than this does not count as the next. */
const ROUNDING = 1e-6;

/**
 * Says when each block of one sound starts, so that all join without a gap. Should one come too
 * late, it and all that follow are moved by the same time: a pause, but no overlap and no loss.
 */
export class BlockClock {
  private start: Seconds;
  private moved = 0;

  /**
   * @param start - when the first frame is to sound, context time
   * @param sampleRate - frames a second
   */
  constructor(
    start: Seconds,
    private readonly sampleRate: Hertz,
  ) {
    // Whole frames of the context's clock: then all blocks lie on whole frames too.
    this.start = (Math.ceil(start * sampleRate - ROUNDING) / sampleRate) as Seconds;
  }

  /** When the first frame sounds, or would have if nothing had come late. */
  get origin(): Seconds {
    return this.start;
  }

  /**
   * The frame that sounds at a time.
   * @param time - context time, not before the origin
   * @returns the first whole frame from then on
   */
  frameAt(time: Seconds): Frames {
    return Math.max(0, Math.ceil((time - this.start) * this.sampleRate - ROUNDING));
  }

  /** How many blocks came too late so far. */
  get lateBlocks(): number {
    return this.moved;
  }

  /**
   * Time of a block.
   * @param from - its first frame within the sound
   * @param now - context time
   * @returns when to start it, never in the past
   */
  timeOf(from: Frames, now: Seconds): Seconds {
    const wanted = this.start + from / this.sampleRate;
    const earliest = now + SAFETY_SECONDS;
    if (wanted >= earliest) return wanted as Seconds;
    const frames = Math.ceil((earliest - wanted) * this.sampleRate);
    this.start = (this.start + frames / this.sampleRate) as Seconds;
    this.moved++;
    return (this.start + from / this.sampleRate) as Seconds;
  }
}
