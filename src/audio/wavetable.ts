import type { Count, Hertz } from "../base/index.ts";
import type { Partial } from "../band/index.ts";
import type { Frames } from "./audio-units.ts";
import { sumOfHarmonics } from "./inverse-transform.ts";
import { dbSplToPeak } from "./level-calibration.ts";

/** One period of a steady note, with a copy of its first sample at the end for interpolation. */
export interface Wavetable {
  readonly period: Float32Array;
  /** Root mean square of the period, digital units. */
  readonly rms: number;
}

/** Share of a period over which the phases of the partials are spread; keeps peaks moderate. */
const PHASE_SPREAD = 0.25;

/**
 * Length of the period of a fundamental, so that the highest partial still has some 32 samples.
 * @param fundamental - Hz
 * @returns a power of two, 512 to 8192; the same for every dynamic, so that tables can be crossfaded
 */
export function periodLength(fundamental: Hertz): Frames {
  const wanted = (32 * 16000) / fundamental;
  let size = 512;
  while (size < wanted && size < 8192) size *= 2;
  return size;
}

/**
 * One period with exactly the given partials: bandlimited by construction.
 * @param partials - harmonics of the fundamental, dB SPL at 1 m
 * @param fundamental - Hz, the frequency of harmonic 1
 * @param ceiling - partials at this frequency or above are left out (half the sampling rate)
 * @returns the period in digital units
 * @throws RangeError when a partial is no harmonic of the fundamental (off by over 1 %)
 */
export function wavetableOf(
  partials: readonly Partial[],
  fundamental: Hertz,
  ceiling: Hertz,
): Wavetable {
  const size = periodLength(fundamental);
  const harmonics = Math.min(size / 2, Math.ceil(ceiling / fundamental));
  const amplitudes = new Float64Array(harmonics);
  for (const { hz, dbSpl } of partials) {
    const number = harmonicNumber(hz, fundamental);
    if (number < harmonics) amplitudes[number] = dbSplToPeak(dbSpl);
  }
  const period = new Float32Array(size + 1);
  period.set(sumOfHarmonics(size, amplitudes, phasesOf(harmonics)));
  period[size] = period[0]!;
  return { period, rms: rmsOf(amplitudes) };
}

function harmonicNumber(hz: Hertz, fundamental: Hertz): Count {
  const number = Math.round(hz / fundamental);
  if (number < 1 || Math.abs(hz / fundamental - number) > 0.01 * number)
    throw new RangeError(`a blown partial must be a harmonic of ${fundamental} Hz, got ${hz} Hz`);
  return number;
}

/**
 * Phases that grow with the square of the harmonic number: each partial comes a little later in
 * the period than the one below, which lowers the peak without blurring the pulse.
 * @source M. R. Schroeder, Synthesis of Low-Peak-Factor Signals, 1970 (used here in part)
 */
function phasesOf(harmonics: Count): Float64Array {
  return Float64Array.from(
    { length: harmonics },
    (_, k) => (PHASE_SPREAD * Math.PI * k * k) / harmonics,
  );
}

function rmsOf(amplitudes: Float64Array): number {
  return Math.sqrt(amplitudes.reduce((sum, a) => sum + a * a, 0) / 2);
}
