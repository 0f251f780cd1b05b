import type { DbSpl, Phon, Sone } from "../base/index.ts";
import { dbToPower, powerToDb } from "./levels.ts";
import { CRITICAL_BANDS, LOW_BAND_REDUCTIONS, UPPER_SLOPES } from "./iso532-1-table.ts";
import { thirdOctaveLevels } from "./iso532-1-third-octaves.ts";
import type { Spectrum } from "./spectrum.ts";

const LOW_BANDS = 11;
const BANDS = 28;
/** Third-octave bands merged into critical bands 1, 2 and 3. */
const MERGED = [
  [0, 6],
  [6, 9],
  [9, 11],
] as const;
const LAST_SLOPE_COLUMN = 7;
const END_BARK = 24;
const STEP_BARK = 0.1;

/** A stretch of the specific loudness over Bark on which it is a straight line. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
}

/** Loudness of Zwicker's method with its pattern. */
export interface ZwickerLoudness {
  readonly loudness: Sone;
  /** Specific loudness in sone/Bark at 0.1, 0.2 … 24 Bark. */
  readonly specific: Float64Array;
}

/** Reduces a low band's level as the ear's insensitivity there asks. */
function reduced(level: number, band: number): number {
  const row =
    LOW_BAND_REDUCTIONS.find(([upTo, reductions]) => level <= upTo - reductions[band]!) ??
    LOW_BAND_REDUCTIONS[LOW_BAND_REDUCTIONS.length - 1]!;
  return level + row[1][band]!;
}

/** Levels of the 20 critical bands from the 28 third-octave bands. */
function criticalBandLevels(levels: readonly DbSpl[]): number[] {
  const low = levels
    .slice(0, LOW_BANDS)
    .map((level, band) => dbToPower(reduced(level, band) as DbSpl));
  const merged = MERGED.map(([from, to]) =>
    powerToDb(low.slice(from, to).reduce((sum, power) => sum + power, 0)),
  );
  return [...merged, ...levels.slice(LOW_BANDS)];
}

/** Core loudness of a critical band. */
function coreLoudness(level: number, band: number, isDiffuse: boolean): number {
  const [threshold, loss, diffuse, adaptation] = CRITICAL_BANDS[band]!;
  let excitation = level - loss + (isDiffuse ? diffuse : 0);
  if (!(excitation > threshold)) return 0;
  excitation -= adaptation;
  const growth = 0.75 + 0.25 * 10 ** ((excitation - threshold) / 10);
  const core = Math.max(0, 0.0635 * 10 ** (0.025 * threshold) * (growth ** 0.25 - 1));
  return band === 0 ? core * Math.min(1, 0.4 + 0.32 * core ** 0.2) : core;
}

/** Steepness of the slope at a value, and the value at which the next range begins. */
function slopeAt(
  value: number,
  band: number,
): { readonly steepness: number; readonly until: number } {
  const column = Math.min(Math.max(band - 1, 0), LAST_SLOPE_COLUMN);
  const row = UPPER_SLOPES.find(([from]) => from < value) ?? UPPER_SLOPES[UPPER_SLOPES.length - 1]!;
  return { steepness: row[1][column]!, until: row[0] };
}

/** One step of a falling slope inside a band: to the next range, the band's value or its edge. */
function fall(from: number, start: number, floor: number, edge: number, band: number): Stretch {
  const { steepness, until } = slopeAt(start, band);
  const target = Math.max(until, floor);
  const to = Math.min(edge, from + (start - target) / steepness);
  const end = to === edge ? start - (edge - from) * steepness : target;
  return { from, to, start, end: Math.max(end, floor) };
}

/** The pattern over Bark as straight stretches: flat cores with slopes into quieter upper bands. */
function pattern(cores: readonly number[]): Stretch[] {
  const stretches: Stretch[] = [];
  let place = 0;
  let value = 0;
  [...cores, 0].forEach((core, band) => {
    const edge = band < CRITICAL_BANDS.length ? CRITICAL_BANDS[band]![4] : END_BARK;
    if (core > value) value = core;
    while (value > core && place < edge) {
      const step = fall(place, value, core, edge, band);
      stretches.push(step);
      ({ to: place, end: value } = step);
    }
    if (place < edge) stretches.push({ from: place, to: edge, start: core, end: core });
    place = edge;
  });
  return stretches;
}

/** Reads the pattern at steps of 0.1 Bark. */
function sampled(stretches: readonly Stretch[]): Float64Array {
  return Float64Array.from({ length: Math.round(END_BARK / STEP_BARK) }, (_, index) => {
    const at = (index + 1) * STEP_BARK;
    const found = stretches.find(({ to }) => to >= at - 1e-9);
    if (found === undefined || found.to === found.from) return 0;
    const share = (at - found.from) / (found.to - found.from);
    return found.start + share * (found.end - found.start);
  });
}

/**
 * Loudness from third-octave levels.
 * @param levels - 28 levels in dB SPL, 25 Hz to 12.5 kHz
 * @param field - free or diffuse sound field
 * @returns loudness and its pattern
 * @throws RangeError unless there are 28 levels
 * @source ISO 532-1:2017 (Zwicker), stationary sounds
 */
export function loudnessOfThirdOctaves(
  levels: readonly DbSpl[],
  field: "free" | "diffuse" = "free",
): ZwickerLoudness {
  if (levels.length !== BANDS)
    throw new RangeError(`ISO 532-1 needs 28 third-octave levels, got ${levels.length}`);
  const cores = criticalBandLevels(levels).map((level, band) =>
    coreLoudness(level, band, field === "diffuse"),
  );
  const stretches = pattern(cores);
  const area = stretches.reduce(
    (sum, { from, to, start, end }) => sum + ((to - from) * (start + end)) / 2,
    0,
  );
  return { loudness: area as Sone, specific: sampled(stretches) };
}

/**
 * Loudness of a steady sound by Zwicker's method: the second opinion beside ISO 532-2.
 * @param spectrum - partials, any order
 * @param field - free or diffuse sound field
 * @returns loudness and its pattern
 * @source ISO 532-1:2017
 */
export function loudnessIso5321(
  spectrum: Spectrum,
  field: "free" | "diffuse" = "free",
): ZwickerLoudness {
  return loudnessOfThirdOctaves(thirdOctaveLevels(spectrum), field);
}

/**
 * Loudness level of a loudness by ISO 532-1.
 * @param loudness - sone
 * @returns phon
 * @source ISO 532-1:2017
 * @example soneToPhon5321(4) // 60
 */
export function soneToPhon5321(loudness: Sone): Phon {
  if (loudness >= 1) return (40 + 10 * Math.log2(loudness)) as Phon;
  return (40 * (loudness + 0.0005) ** 0.35) as Phon;
}
