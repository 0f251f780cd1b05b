import type { Count, DbSpl, Hertz, Ratio, SoundingMidi } from "../base/index.ts";
import { midiToHz } from "../base/index.ts";
import { hearingThresholdTerhardt } from "./hearing-threshold.ts";
import { dbToPower, powerToDb } from "./levels.ts";
import { ascending, type Spectrum } from "./spectrum.ts";

/** Pitches the model knows, MIDI 0 to 120. */
const PITCHES = 121;
const HARMONICS: Count = 11;
const TONE_LEVEL_DB = 60;
const MASKING_DB_PER_UNIT = 12;
const SATURATION_DB = 15;
const COMPLEX_DIVISOR = 3;
const PURE_SCALE = 0.5;
const COMPLEX_SCALE = 0.2;
const MULTIPLICITY_EXPONENT = 0.5;

/** Semitones of harmonics 1 to 11 above the fundamental, rounded as the model does. */
const HARMONIC_STEPS = Array.from({ length: HARMONICS }, (_, index) =>
  Math.round(12 * Math.log2(index + 1)),
);

const THRESHOLDS = Array.from({ length: PITCHES }, (_, pitch) =>
  hearingThresholdTerhardt(midiToHz(pitch as SoundingMidi)),
);

/** Levels of a sound by chromatic pitch: dB SPL at MIDI 0 to 120, minus infinity where silent. */
export type ChromaticLevels = Float64Array;

/** What the ear makes of a sonority, each list over MIDI 0 to 120. */
export interface SonorityAnalysis {
  /** Audibility of sine components after masking, 0 to 1. */
  readonly pure: Float64Array;
  /** Audibility of complex tones, heard by their pattern of harmonics. */
  readonly complex: Float64Array;
  /** Probability of noticing a pitch. */
  readonly salience: Float64Array;
  /** About how many tones are noticed. */
  readonly multiplicity: Ratio;
  readonly pureSonorousness: Ratio;
  /** How much the sonority is like a harmonic series. */
  readonly complexSonorousness: Ratio;
}

/**
 * Height of a pure tone, the model's critical-band rate.
 * @param hz - frequency
 * @returns 0 at 0 Hz to 36 at 16 kHz
 * @source R. Parncutt and H. Strasburger 1994, Perspectives of New Music 32(2), 88, equation 3
 */
export function pureToneHeight(hz: Hertz): Ratio {
  const khz = hz / 1000;
  return 11.17 * Math.log((khz + 0.312) / (khz + 14.675)) + 43;
}

const HEIGHTS = Array.from({ length: PITCHES }, (_, pitch) =>
  pureToneHeight(midiToHz(pitch as SoundingMidi)),
);

/**
 * Level by which a component masks at a distance.
 * @param level - level of the masker above the hearing threshold, dB
 * @param distance - difference of pure-tone heights
 * @returns masking level, dB
 * @source Parncutt and Strasburger 1994, equation 4
 */
export function maskingLevel(level: Ratio, distance: Ratio): Ratio {
  return level - MASKING_DB_PER_UNIT * Math.abs(distance);
}

/**
 * Chromatic levels of plain tones: 11 harmonics with amplitudes 1/n, 60 dB at the fundamental,
 * harmonics rounded to semitones and added by power.
 * @param pitches - sounding pitches, unisons counted as often as they sound
 * @returns levels at MIDI 0 to 120
 * @source Parncutt and Strasburger 1994, input of the examples
 */
export function chromaticLevelsOfPitches(pitches: readonly SoundingMidi[]): ChromaticLevels {
  const powers = new Float64Array(PITCHES);
  for (const pitch of pitches)
    HARMONIC_STEPS.forEach((step, index) => {
      const at = pitch + step;
      if (at < PITCHES)
        powers[at] = powers[at]! + dbToPower(TONE_LEVEL_DB as DbSpl) / (index + 1) ** 2;
    });
  return powers.map(powerToDb);
}

/**
 * Chromatic levels of a real sound, each partial moved to the nearest semitone.
 * @param spectrum - partials, any order
 * @returns levels at MIDI 0 to 120; partials outside are left out
 * @source input form of Parncutt and Strasburger 1994
 */
export function chromaticLevelsOfSpectrum(spectrum: Spectrum): ChromaticLevels {
  const powers = new Float64Array(PITCHES);
  const sorted = ascending(spectrum);
  for (const { hz, dbSpl } of sorted) {
    const at = Math.round(69 + 12 * Math.log2(hz / 440));
    if (at >= 0 && at < PITCHES) powers[at] = powers[at]! + dbToPower(dbSpl);
  }
  return powers.map(powerToDb);
}

/** Audibility of every sine component once the others mask it. */
function pureAudibility(levels: ChromaticLevels): Float64Array {
  const heard = levels.map((level, pitch) => Math.max(0, level - THRESHOLDS[pitch]!));
  const sounding = [...levels.keys()].filter((pitch) => levels[pitch]! > -Infinity);
  const audibility = new Float64Array(PITCHES);
  for (const pitch of sounding) {
    // A component does not mask itself: the model counts 0 dB for it in the sum.
    const pressure = sounding.reduce((sum, other) => {
      const distance = HEIGHTS[other]! - HEIGHTS[pitch]!;
      const masking = other === pitch ? 0 : maskingLevel(heard[other]!, distance);
      return sum + 10 ** (masking / 20);
    }, 0);
    const masked = Math.max(0, 20 * Math.log10(pressure));
    audibility[pitch] = 1 - Math.exp(-Math.max(0, heard[pitch]! - masked) / SATURATION_DB);
  }
  return audibility;
}

/** Audibility of a complex tone at every pitch, by the harmonics found above it. */
function complexAudibility(pure: Float64Array): Float64Array {
  return pure.map((_, pitch) => {
    const match = HARMONIC_STEPS.reduce((sum, step, index) => {
      const found = pitch + step < PITCHES ? pure[pitch + step]! : 0;
      return sum + Math.sqrt(found / (index + 1));
    }, 0);
    return match ** 2 / COMPLEX_DIVISOR;
  });
}

function sum(values: Float64Array): number {
  return values.reduce((total, value) => total + value, 0);
}

function peak(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, value), 0);
}

/**
 * Pitches the ear gets from a sonority.
 * @param levels - chromatic levels
 * @returns audibilities, saliences, multiplicity and sonorousness; all 0 for silence
 * @source Parncutt and Strasburger 1994
 * @example analyseSonority(chromaticLevelsOfPitches([60, 64, 67])).multiplicity // 2.844
 */
export function analyseSonority(levels: ChromaticLevels): SonorityAnalysis {
  const pure = pureAudibility(levels);
  const complex = complexAudibility(pure);
  const combined = pure.map((value, pitch) => Math.max(value, complex[pitch]!));
  const most = peak(combined);
  const simple = most > 0 ? sum(combined) / most : 0;
  const multiplicity = simple ** MULTIPLICITY_EXPONENT;
  return {
    pure,
    complex,
    salience: combined.map((value) => (most > 0 ? ((value / most) * multiplicity) / simple : 0)),
    multiplicity,
    pureSonorousness: PURE_SCALE * Math.sqrt(sum(pure.map((value) => value * value))),
    complexSonorousness: COMPLEX_SCALE * peak(complex),
  };
}

/**
 * How much two sonorities have their noticed pitches in common.
 * @param first - one sonority
 * @param second - the other; the order does not matter
 * @returns correlation of saliences, 1 for equal ones
 * @throws RangeError when one is silent
 * @source Parncutt and Strasburger 1994
 */
export function pitchCommonality(first: SonorityAnalysis, second: SonorityAnalysis): Ratio {
  const a = first.salience;
  const b = second.salience;
  const meanA = sum(a) / PITCHES;
  const meanB = sum(b) / PITCHES;
  const spread = (values: Float64Array, mean: number): number =>
    sum(values.map((value) => (value - mean) ** 2));
  const both = sum(a.map((value, pitch) => (value - meanA) * (b[pitch]! - meanB)));
  const scale = Math.sqrt(spread(a, meanA) * spread(b, meanB));
  if (scale === 0)
    throw new RangeError("pitch commonality needs two sounding sonorities, got silence");
  return both / scale;
}
