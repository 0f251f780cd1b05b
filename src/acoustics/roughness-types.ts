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
  /** Frequency in Hz from which no partial is rough with one at the given frequency, if any. */
  readonly reach?: (lowHz: Ratio) => Ratio;
  /** What the sum over all pairs is divided by; 1 for silence. */
  readonly divisor: (strength: PressureStrength) => Ratio;
}

/** How strong a sound's partials are together. */
export interface PressureStrength {
  /** Largest pressure of a partial. */
  readonly peak: Ratio;
  /** Sum of the squares of all pressures. */
  readonly power: Ratio;
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

/**
 * Strength of a set of pressures.
 * @param amplitudes - linear pressures in any one unit, any order
 * @returns largest pressure and sum of squares
 */
export function pressureStrength(amplitudes: Float64Array): PressureStrength {
  const sorted = amplitudes.slice().sort();
  return {
    peak: sorted[sorted.length - 1] ?? 0,
    power: sorted.reduce((sum, value) => sum + value * value, 0),
  };
}
