import type { Count, Hertz } from "../base/index.ts";
import type { Frames } from "./audio-units.ts";

/** One ringing mode: a sine that dies away. */
export interface Mode {
  readonly hz: Hertz;
  /** Peak amplitude at the stroke, digital units. */
  readonly peak: number;
  /** Seconds to fall by 60 dB. */
  readonly t60: number;
  /** Phase at the stroke, radians. */
  readonly phase: number;
}

/** A mode this soft is left out from then on: 110 dB under full scale. */
const INAUDIBLE_PEAK = 3e-6;

/**
 * A bank of ringing modes, two multiplications a sample and mode: y(n) = 2r·cos ω·y(n−1) − r²·y(n−2).
 * @source J. O. Smith, Introduction to Digital Filters (two-pole resonator)
 */
export class RingingModes {
  private readonly turn: Float64Array;
  private readonly loss: Float64Array;
  private readonly last: Float64Array;
  private readonly beforeLast: Float64Array;
  private readonly framesLeft: Float64Array;

  /**
   * @param modes - what rings; modes at half the sampling rate or above are left out
   * @param sampleRate - Hz
   */
  constructor(modes: readonly Mode[], sampleRate: Hertz) {
    const heard = modes.filter(({ hz, peak }) => hz < sampleRate / 2 && peak > INAUDIBLE_PEAK);
    const radius = heard.map(({ t60 }) => 10 ** (-3 / (t60 * sampleRate)));
    const omega = heard.map(({ hz }) => (2 * Math.PI * hz) / sampleRate);
    this.turn = Float64Array.from(heard, (_, m) => 2 * radius[m]! * Math.cos(omega[m]!));
    this.loss = Float64Array.from(radius, (r) => r * r);
    this.last = Float64Array.from(
      heard,
      ({ peak, phase }, m) => (peak / radius[m]!) * Math.sin(phase - omega[m]!),
    );
    this.beforeLast = Float64Array.from(
      heard,
      ({ peak, phase }, m) => (peak / this.loss[m]!) * Math.sin(phase - 2 * omega[m]!),
    );
    this.framesLeft = Float64Array.from(
      heard,
      ({ peak, t60 }) => (t60 * sampleRate * Math.log10(peak / INAUDIBLE_PEAK)) / 3,
    );
  }

  /** How many modes still ring. */
  get count(): Count {
    return this.framesLeft.filter((left) => left > 0).length;
  }

  /**
   * Adds the next frames of all modes.
   * @param out - array to add into
   * @param from - first index
   * @param to - index after the last
   */
  addTo(out: Float32Array, from: Frames, to: Frames): void {
    for (let m = 0; m < this.turn.length; m++) {
      if (this.framesLeft[m]! <= 0) continue;
      const turn = this.turn[m]!;
      const loss = this.loss[m]!;
      let last = this.last[m]!;
      let beforeLast = this.beforeLast[m]!;
      for (let i = from; i < to; i++) {
        const y = turn * last - loss * beforeLast;
        beforeLast = last;
        last = y;
        out[i] = out[i]! + y;
      }
      this.last[m] = last;
      this.beforeLast[m] = beforeLast;
      this.framesLeft[m] = this.framesLeft[m]! - (to - from);
    }
  }
}
