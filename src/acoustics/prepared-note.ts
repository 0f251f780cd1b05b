import type { Count, Hertz, Ratio } from "../base/index.ts";
import type { EarGrid } from "./ear-grid.ts";
import { erbHz } from "./erb.ts";
import { cochlearInput, type CochlearInput, type SoundField } from "./iso532-2-cochlea.ts";
import { excitationAt, lowerSideFactors } from "./iso532-2-excitation.ts";
import { roexWeight } from "./roex-filter.ts";
import type { StepOfPower } from "./level-steps.ts";
import type { SlopeRows } from "./slope-rows.ts";
import { AUDIBLE_HARMONICS } from "./audibility.ts";
import { spectrumAmplitudes, type AmplitudeSpectrum, type Spectrum } from "./spectrum.ts";

/** Partials within this share of a grid step of a place count as on it. */
const ON_PLACE = 0.06;
const NEGLIGIBLE_STEEPNESS = 40;

/** One note as the fast ear keeps it; made by the engine, the same for every voicing it is in. */
export interface PreparedNote {
  /** Number of the note in its engine. */
  readonly index: Count;
  /** Number of its fundamental in its engine: notes of one pitch share it. */
  readonly pitch: Count;
  readonly fundamental: Hertz;
  /** First grid place with anything in it. */
  readonly from: Count;
  /** Per place: power of the components laid there. */
  readonly power: Float64Array;
  /** Per place: power within one ERB around it. */
  readonly nearby: Float64Array;
  /** Per place: exact excitation of the note alone less what the coarse pass gives for it alone. */
  readonly rest: Float64Array;
  /** Per place: exact excitation of the note alone. */
  readonly alone: Float64Array;
  /** Places with power, ascending, and their powers. */
  readonly places: Int32Array;
  readonly placePowers: Float64Array;
  /** Places of harmonics 1 to 8. */
  readonly channels: Int32Array;
  readonly pressures: AmplitudeSpectrum;
  /** Sum of pressures and of pressures times Hz, then of powers and of powers times Hz. */
  readonly moments: readonly [Ratio, Ratio, Ratio, Ratio];
}

/** Place of a frequency on the grid, with fractions, held inside it. */
function gridPosition(grid: EarGrid, hz: number): number {
  const semitones = 12 * Math.log2(hz / grid.hz[0]!);
  return Math.min(grid.size - 1, Math.max(0, semitones));
}

/** Lays components on the grid: each on its place or shared by two neighbours. */
function laidPower(grid: EarGrid, input: CochlearInput): Float64Array {
  const power = new Float64Array(grid.size);
  input.hz.forEach((hz, index) => {
    const position = gridPosition(grid, hz);
    const nearest = Math.round(position);
    const isOnPlace = Math.abs(position - nearest) < ON_PLACE;
    const below = isOnPlace ? nearest : Math.floor(position);
    const share = isOnPlace ? 0 : position - below;
    power[below] = power[below]! + (1 - share) * input.power[index]!;
    if (share > 0) power[below + 1] = power[below + 1]! + share * input.power[index]!;
  });
  return power;
}

/** Power within one ERB around every place. */
function nearbyPower(grid: EarGrid, input: CochlearInput): Float64Array {
  return grid.hz.map((centre) => {
    const perHz = 4 / erbHz(centre as Hertz);
    return input.hz.reduce((sum, hz, index) => {
      const steepness = Math.abs(hz - centre) * perHz;
      if (steepness > NEGLIGIBLE_STEEPNESS) return sum;
      return sum + input.power[index]! * roexWeight(steepness);
    }, 0);
  });
}

/** What the coarse pass gives for the note alone. */
function coarseExcitation(
  rows: SlopeRows,
  stepOf: StepOfPower,
  power: Float64Array,
  nearby: Float64Array,
): Float64Array {
  const excitation = new Float64Array(power.length);
  power.forEach((value, place) => {
    if (value === 0) return;
    const row = place * rows.levels + stepOf(nearby[place]!);
    const end = rows.starts[row + 1]!;
    for (let at = rows.starts[row]!, to = place; at < end; at += 1, to += 1)
      excitation[to] = excitation[to]! + value * rows.weights[at]!;
  });
  return excitation;
}

/**
 * Fundamental of a note: its lowest partial.
 * @param spectrum - partials of one note, at least one
 * @returns frequency in Hz
 * @throws RangeError for a note without partials
 */
export function fundamentalOf(spectrum: Spectrum): Hertz {
  if (spectrum.length === 0) throw new RangeError("a note needs at least one partial, got none");
  return Math.min(...spectrum.map((partial) => partial.hz)) as Hertz;
}

/** Places of the partials that are harmonics 1 to 8 of the lowest. */
function harmonicPlaces(grid: EarGrid, spectrum: Spectrum): Int32Array {
  const lowest = fundamentalOf(spectrum);
  const heard = spectrum.filter(({ hz }) => Math.round(hz / lowest) <= AUDIBLE_HARMONICS);
  return Int32Array.from(new Set(heard.map(({ hz }) => Math.round(gridPosition(grid, hz))))).sort();
}

function momentsOf({ hz, amplitude }: AmplitudeSpectrum): [number, number, number, number] {
  const moments: [number, number, number, number] = [0, 0, 0, 0];
  amplitude.forEach((value, index) => {
    const frequency = hz[index]!;
    moments[0] += value;
    moments[1] += value * frequency;
    moments[2] += value * value;
    moments[3] += value * value * frequency;
  });
  return moments;
}

/** Numbers that an engine gives to a note. */
export interface NoteNumbers {
  readonly index: Count;
  readonly pitch: Count;
}

/** What notes are prepared with. */
export interface NoteWorkshop {
  readonly grid: EarGrid;
  readonly rows: SlopeRows;
  readonly stepOf: StepOfPower;
  readonly field: SoundField;
}

/**
 * Prepares a note: everything about it that does not depend on the other notes.
 * @param workshop - grid, slopes and field of an engine
 * @param spectrum - partials of the note, at least one
 * @param numbers - numbers of the note and of its pitch
 * @returns the prepared note
 * @throws RangeError for a note without partials
 */
export function prepareNote(
  workshop: NoteWorkshop,
  spectrum: Spectrum,
  numbers: NoteNumbers,
): PreparedNote {
  const fundamental = fundamentalOf(spectrum);
  const { grid, rows, stepOf, field } = workshop;
  const input = cochlearInput(spectrum, field);
  const power = laidPower(grid, input);
  const nearby = nearbyPower(grid, input);
  const coarse = coarseExcitation(rows, stepOf, power, nearby);
  const exact = excitationAt(input, lowerSideFactors(input), grid.hz);
  const rest = exact.map((value, place) => value - coarse[place]!);
  const places = Int32Array.from([...power.keys()].filter((place) => power[place] !== 0));
  const pressures = spectrumAmplitudes(spectrum);
  const channels = harmonicPlaces(grid, spectrum);
  return {
    ...numbers,
    fundamental,
    from: Math.max(
      0,
      [...exact].findIndex((value) => value > 1e-12),
    ),
    power,
    nearby,
    rest,
    alone: exact,
    places,
    placePowers: Float64Array.from(places, (place) => power[place]!),
    channels,
    pressures,
    moments: momentsOf(pressures),
  };
}
