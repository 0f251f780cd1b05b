import type { Count, Db, DbSpl, Hertz, Ratio } from "../base/index.ts";
import { dbToPower, powerToDb, sumLevels } from "./levels.ts";

/** One sine component of a steady sound. */
export interface SpectrumPartial {
  readonly hz: Hertz;
  /** Level at the listener, dB re 20 µPa. */
  readonly dbSpl: DbSpl;
}

/** A steady sound as its partials, in any order; partials at one frequency add by power. */
export type Spectrum = readonly SpectrumPartial[];

/** Partials with sound pressures instead of levels, for the roughness models. */
export interface AmplitudeSpectrum {
  /** Frequencies in Hz, n partials, ascending. */
  readonly hz: Float64Array;
  /** Linear pressures in any one unit, n partials. */
  readonly amplitude: Float64Array;
}

/**
 * Refuses what is no spectrum.
 * @param spectrum - partials
 * @returns the same spectrum
 * @throws RangeError when a frequency is not above 0 Hz or a level is not a number
 */
export function checkSpectrum(spectrum: Spectrum): Spectrum {
  for (const { hz, dbSpl } of spectrum) {
    if (!(hz > 0) || !Number.isFinite(hz))
      throw new RangeError(`a partial's frequency must be above 0 Hz, got ${hz}`);
    if (Number.isNaN(dbSpl) || dbSpl === Infinity)
      throw new RangeError(`a partial's level must be a number of dB, got ${dbSpl}`);
  }
  return spectrum;
}

/**
 * Puts partials in one order, whatever order they came in, so that sums over them agree to the last
 * bit.
 * @param spectrum - partials, any order
 * @returns partials by ascending frequency, then level
 */
export function ascending(spectrum: Spectrum): Spectrum {
  return [...spectrum].sort((a, b) => a.hz - b.hz || a.dbSpl - b.dbSpl);
}

/**
 * Level of the whole sound, its partials taken as independent.
 * @param spectrum - partials
 * @returns dB SPL; minus infinity for silence
 */
export function spectrumLevel(spectrum: Spectrum): DbSpl {
  return sumLevels(ascending(spectrum).map((partial) => partial.dbSpl));
}

/**
 * The same sound, louder or softer.
 * @param spectrum - partials
 * @param by - change of level
 * @returns a new spectrum
 */
export function raiseSpectrum(spectrum: Spectrum, by: Db): Spectrum {
  return spectrum.map(({ hz, dbSpl }) => ({ hz, dbSpl: (dbSpl + by) as DbSpl }));
}

/**
 * Several sounds heard together, every partial kept.
 * @param spectra - one spectrum a sound
 * @returns all partials, one sound after the other
 */
export function mixSpectra(spectra: readonly Spectrum[]): Spectrum {
  return spectra.flat();
}

/** What a plain harmonic sound is made of. */
export interface HarmonicRecipe {
  readonly fundamental: Hertz;
  readonly harmonics: Count;
  /** Level of all partials together. */
  readonly level: DbSpl;
  /** Pressure of harmonic n (1 = fundamental) relative to the others. */
  readonly amplitude: (harmonic: Count) => Ratio;
}

/**
 * A harmonic sound from a recipe, scaled to a total level.
 * @param recipe - fundamental, number of harmonics, their amplitudes, total level
 * @returns partials, ascending Hz
 * @throws RangeError without a harmonic
 * @example harmonicSpectrum({ fundamental: 440, harmonics: 20, level: 70, amplitude: (n) => 1 / n })
 */
export function harmonicSpectrum(recipe: HarmonicRecipe): Spectrum {
  const { fundamental, harmonics, level, amplitude } = recipe;
  if (!(harmonics >= 1)) throw new RangeError(`a sound needs a harmonic, got ${harmonics}`);
  const powers = Array.from({ length: harmonics }, (_, index) => amplitude(index + 1) ** 2);
  const scale = level - powerToDb(powers.reduce((sum, power) => sum + power, 0));
  return powers.map((power, index) => ({
    hz: (fundamental * (index + 1)) as Hertz,
    dbSpl: (scale + powerToDb(power)) as DbSpl,
  }));
}

/**
 * Pressures of a spectrum.
 * @param spectrum - partials
 * @returns frequencies, ascending, and linear pressures re 20 µPa
 */
export function spectrumAmplitudes(spectrum: Spectrum): AmplitudeSpectrum {
  const sorted = ascending(spectrum);
  return {
    hz: Float64Array.from(sorted, (partial) => partial.hz),
    amplitude: Float64Array.from(sorted, (partial) => Math.sqrt(dbToPower(partial.dbSpl))),
  };
}
