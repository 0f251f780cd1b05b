import type { Count, Ratio } from "../base/index.ts";

/** A published way to rate the roughness of two partials and to put a whole sound on one scale. */
export interface RoughnessMethod {
  /** Stable id, kebab case. */
  readonly id: string;
  readonly label: string;
  readonly source: string;
  /**
   * Roughness of two partials, frequencies in Hz with the first not above the second, pressures
   * linear in any one unit.
   */
  readonly pair: (lowHz: Ratio, lowAmp: Ratio, highHz: Ratio, highAmp: Ratio) => Ratio;
  /** What the sum over all pairs is divided by, from all the sound's pressures. */
  readonly divisor: (amplitudes: Float64Array) => Ratio;
}

/** Roughness between two notes of a sound. */
export interface PairRoughness {
  /** Places of the notes in the list given, first before second. */
  readonly first: Count;
  readonly second: Count;
  readonly value: Ratio;
}

/** Roughness of a sound of several notes. */
export interface Roughness {
  /** All pairs of partials. */
  readonly total: Ratio;
  /** Pairs inside single notes. */
  readonly within: Ratio;
  /** Pairs of partials from two notes. */
  readonly between: Ratio;
  /** One entry for every two notes, in the order given. */
  readonly pairs: readonly PairRoughness[];
}

/** Largest pressure of a sound, 1 when it is silent. */
export function peakOf(amplitudes: Float64Array): Ratio {
  return amplitudes.reduce((peak, value) => Math.max(peak, value), 0) || 1;
}
