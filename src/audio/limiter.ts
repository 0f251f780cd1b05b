import type { Hertz, Ratio } from "../base/index.ts";
import type { DbTp, Frames, StereoSamples } from "./audio-units.ts";
import { dbToGain } from "./level-calibration.ts";
import { SlidingLeast } from "./sliding-least.ts";
import { largest, LARGEST_OVERSHOOT, PEAK_HALF_TAPS, peakAfter } from "./true-peak.ts";

/** The level no peak may pass. */
export const CEILING_DB_TP: DbTp = -1 as DbTp;
/** 4 × oversampling can under-read a peak at 12 kHz by 0.17 dB: aim that much lower. */
const MARGIN_DB = 0.2;
/** The gain comes down over this time before a peak and begins to recover after it. */
const LOOK_AHEAD_SECONDS = 0.0015;
const RECOVERY_SECONDS = 0.12;
/** Frames taken at once. */
const CHUNK_FRAMES = 32;
/** Samples kept from before the chunk for the rebuilding filters. */
const KEPT = 2 * PEAK_HALF_TAPS;

/**
 * A stereo limiter for true peaks with look-ahead. Below the ceiling it is a pure delay; one code
 * runs live and offline. The gain is the least the coming peaks allow, recovers slowly, and is
 * averaged over the look-ahead so that it never jumps.
 * @source ITU-R BS.1770-5 annex 2 for the peak estimate; look-ahead limiting: common practice,
 * no single source
 */
export class TruePeakLimiter {
  /** Frames by which the output lags the input. */
  readonly latency: Frames;
  private readonly window: Frames;
  private readonly ceiling: Ratio;
  private readonly recovery: Ratio;
  private readonly least: SlidingLeast;
  private readonly averaged: Float64Array;
  private averagedAt = 0;
  private averagedSum: number;
  private reduced = 0;
  private recovering = 1;
  private readonly history: readonly [Float32Array, Float32Array];
  private readonly delayed: readonly [Float32Array, Float32Array];
  private delayedAt = 0;

  /**
   * @param sampleRate - Hz
   * @param ceiling - the level no peak may pass, −1 dBTP unless given
   */
  constructor(sampleRate: Hertz, ceiling: DbTp = CEILING_DB_TP) {
    this.window = Math.max(8, Math.round(LOOK_AHEAD_SECONDS * sampleRate));
    this.latency = this.window - 1 + PEAK_HALF_TAPS;
    this.ceiling = dbToGain((ceiling - MARGIN_DB) as DbTp);
    this.recovery = 1 - Math.exp(-1 / (RECOVERY_SECONDS * sampleRate));
    this.least = new SlidingLeast(this.window + 2);
    this.averaged = new Float64Array(this.window).fill(1);
    this.averagedSum = this.window;
    this.history = [new Float32Array(KEPT + CHUNK_FRAMES), new Float32Array(KEPT + CHUNK_FRAMES)];
    this.delayed = [new Float32Array(this.latency), new Float32Array(this.latency)];
  }

  /**
   * Limits the next frames in place; what comes out entered `latency` frames ago.
   * @param outLeft - left channel
   * @param outRight - right channel, same length
   */
  process(outLeft: Float32Array, outRight: Float32Array): void {
    for (let from = 0; from < outLeft.length; from += CHUNK_FRAMES)
      this.chunk(outLeft, outRight, from, Math.min(CHUNK_FRAMES, outLeft.length - from));
  }

  private chunk(outLeft: Float32Array, outRight: Float32Array, from: Frames, frames: Frames): void {
    const [leftPast, rightPast] = this.history;
    for (let i = 0; i < frames; i++) {
      leftPast[KEPT + i] = outLeft[from + i]!;
      rightPast[KEPT + i] = outRight[from + i]!;
    }
    const most = Math.max(
      largest(leftPast, 0, KEPT + frames),
      largest(rightPast, 0, KEPT + frames),
    );
    const isQuiet = most * LARGEST_OVERSHOOT <= this.ceiling;
    if (isQuiet && this.isIdle()) this.passOn(outLeft, outRight, from, frames);
    else this.limit(outLeft, outRight, from, frames, isQuiet);
    leftPast.copyWithin(0, frames, frames + KEPT);
    rightPast.copyWithin(0, frames, frames + KEPT);
  }

  /** True when the gain is 1 and nothing above the ceiling is on its way. */
  private isIdle(): boolean {
    return this.reduced === 0 && this.recovering === 1 && this.pending === 0;
  }

  /** Frames since the last peak above the ceiling, counted down from the window. */
  private pending = 0;

  private passOn(
    outLeft: Float32Array,
    outRight: Float32Array,
    from: Frames,
    frames: Frames,
  ): void {
    for (let i = from; i < from + frames; i++) this.delay(outLeft, outRight, i, 1);
  }

  private limit(
    outLeft: Float32Array,
    outRight: Float32Array,
    from: Frames,
    frames: Frames,
    isQuiet: boolean,
  ): void {
    const [leftPast, rightPast] = this.history;
    for (let i = 0; i < frames; i++) {
      const at = KEPT + i - PEAK_HALF_TAPS;
      const peak = isQuiet ? 0 : Math.max(peakAfter(leftPast, at), peakAfter(rightPast, at));
      this.delay(outLeft, outRight, from + i, this.nextGain(peak));
    }
  }

  private nextGain(peak: number): number {
    const allowed = peak > this.ceiling ? this.ceiling / peak : 1;
    this.pending = allowed < 1 ? this.window + 2 : Math.max(0, this.pending - 1);
    const held = this.least.push(allowed);
    let now = this.recovering;
    now = held < now ? held : now + this.recovery * (held - now);
    if (now > 1 - 1e-7) now = 1;
    this.recovering = now;
    const leaving = this.averaged[this.averagedAt]!;
    this.averaged[this.averagedAt] = now;
    this.averagedAt = (this.averagedAt + 1) % this.window;
    this.reduced += (now < 1 ? 1 : 0) - (leaving < 1 ? 1 : 0);
    this.averagedSum += now - leaving;
    // Start the running sum afresh whenever it is known exactly: rounding cannot pile up.
    if (this.reduced === 0) this.averagedSum = this.window;
    return this.averagedSum / this.window;
  }

  private delay(outLeft: Float32Array, outRight: Float32Array, at: Frames, gain: number): void {
    const [leftDelayed, rightDelayed] = this.delayed;
    const slot = this.delayedAt;
    const newLeft = outLeft[at]!;
    const newRight = outRight[at]!;
    outLeft[at] = gain * leftDelayed[slot]!;
    outRight[at] = gain * rightDelayed[slot]!;
    leftDelayed[slot] = newLeft;
    rightDelayed[slot] = newRight;
    this.delayedAt = slot + 1 === this.latency ? 0 : slot + 1;
  }
}

/**
 * Limits a whole recording, without delay.
 * @param samples - two channels
 * @param sampleRate - Hz
 * @param ceiling - the level no peak may pass, −1 dBTP unless given
 * @returns new arrays of the same length
 */
export function limited(
  samples: StereoSamples,
  sampleRate: Hertz,
  ceiling: DbTp = CEILING_DB_TP,
): StereoSamples {
  const limiter = new TruePeakLimiter(sampleRate, ceiling);
  const frames = samples.left.length;
  const left = new Float32Array(frames + limiter.latency);
  const right = new Float32Array(frames + limiter.latency);
  left.set(samples.left);
  right.set(samples.right);
  limiter.process(left, right);
  return { left: left.slice(limiter.latency), right: right.slice(limiter.latency) };
}
