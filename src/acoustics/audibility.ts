import type { Db, Hertz, Ratio } from "../base/index.ts";
import { verdictOf, type AudibilityVerdict, type HearingClass } from "./audibility-verdict.ts";
import { cochlearInput, type CochlearInput, type SoundField } from "./iso532-2-cochlea.ts";
import { excitationAt, lowerSideFactors } from "./iso532-2-excitation.ts";
import { channelGrowth } from "./iso532-2-specific-loudness.ts";
import { powerToDb } from "./levels.ts";
import { maskedThreshold } from "./masked-threshold.ts";
import { mixSpectra, type Spectrum } from "./spectrum.ts";

/** Harmonics that make a note be heard as itself; higher ones fool the measure. */
export const AUDIBLE_HARMONICS = 8;

/** One player's sound among others. */
export interface SoundSource {
  /** Who sounds it. */
  readonly id: string;
  /**
   * Sources with the same key are judged as one: players of one section on one note, or any players
   * meant to be heard as one. Its own id unless given.
   */
  readonly group?: string;
  /** Partials of the note, the fundamental among them (the lowest counts as the fundamental). */
  readonly spectrum: Spectrum;
}

/** Who covers a source, and how much of the noise is theirs. */
export interface CoveringSource {
  readonly group: string;
  readonly ids: readonly string[];
  /** Share of the noise in the source's best channel, 0 to 1. */
  readonly share: Ratio;
}

/** How well one source is heard among the others. */
export interface Audibility {
  readonly group: string;
  readonly ids: readonly string[];
  /** Level above the masked threshold in the best channel of harmonics 1 to 8. */
  readonly margin: Db;
  /** Centre of that channel. */
  readonly channel: Hertz;
  readonly verdict: AudibilityVerdict;
  /** What the margin alone says, also where the verdict is uncertain. */
  readonly leaning: HearingClass;
  /** Who contributes most of the noise in that channel; null for a clear source. */
  readonly coveredBy: CoveringSource | null;
}

interface MergedSource {
  readonly group: string;
  readonly ids: readonly string[];
  readonly input: CochlearInput;
  readonly centres: Float64Array;
}

/** Frequencies of the partials that are harmonics 1 to 8 of the lowest one. */
function harmonicCentres(spectrum: Spectrum): Float64Array {
  const sorted = [...new Set(spectrum.map((partial) => partial.hz))].sort((a, b) => a - b);
  const lowest = sorted[0]!;
  return Float64Array.from(sorted.filter((hz) => Math.round(hz / lowest) <= AUDIBLE_HARMONICS));
}

function mergeSources(sources: readonly SoundSource[], field: SoundField): MergedSource[] {
  const groups = new Map<string, SoundSource[]>();
  for (const source of sources) {
    if (source.spectrum.length === 0)
      throw new RangeError(`a source needs at least one partial, got none for ${source.id}`);
    const key = source.group ?? source.id;
    groups.set(key, [...(groups.get(key) ?? []), source]);
  }
  return [...groups].map(([group, members]) => {
    const spectrum = mixSpectra(members.map((member) => member.spectrum));
    return {
      group,
      ids: members.map((member) => member.id),
      input: cochlearInput(spectrum, field),
      centres: harmonicCentres(spectrum),
    };
  });
}

/** The channel where a source stands out most, with every source's excitation there. */
function bestChannel(
  own: number,
  excitations: readonly Float64Array[],
  centres: Float64Array,
): { readonly margin: Db; readonly index: number } {
  let best = { margin: -Infinity as Db, index: 0 };
  centres.forEach((centre, index) => {
    const noise = excitations.reduce(
      (sum, pattern, source) => (source === own ? sum : sum + pattern[index]!),
      0,
    );
    const quiet = channelGrowth(centre as Hertz).threshold;
    const least = maskedThreshold(centre as Hertz, noise, quiet);
    const margin = powerToDb(excitations[own]![index]! / least);
    if (margin > best.margin) best = { margin, index };
  });
  return best;
}

function covering(
  own: number,
  merged: readonly MergedSource[],
  excitations: readonly Float64Array[],
  index: number,
): CoveringSource | null {
  let noise = 0;
  let loudest = -1;
  excitations.forEach((pattern, source) => {
    if (source === own) return;
    noise += pattern[index]!;
    if (loudest < 0 || pattern[index]! > excitations[loudest]![index]!) loudest = source;
  });
  const by = merged[loudest];
  if (by === undefined) return null;
  const share = noise > 0 ? excitations[loudest]![index]! / noise : 0;
  return { group: by.group, ids: by.ids, share };
}

/**
 * How well each player is heard among the others. A source's margin is the largest value over the
 * channels of its harmonics 1 to 8 of 10 lg[E / (K N + Q)]: E its excitation, N that of all others,
 * Q the threshold in quiet, K the ratio needed in noise, filters shaped by the total. The model
 * knows no fusion of harmonics, no onsets and no places on a stage.
 * @param sources - every player that sounds, with the spectrum at the listener
 * @param field - where the levels were taken
 * @returns one entry a group, in the order in which the groups first appear
 * @throws RangeError for a source without partials
 * @source masked threshold: Moore, Glasberg and Baer 1997; margin over harmonics 1 to 8 and its
 *   classes: definition of this project
 */
export function audibility(
  sources: readonly SoundSource[],
  field: SoundField = "free",
): readonly Audibility[] {
  const merged = mergeSources(sources, field);
  const whole = cochlearInput(mixSpectra(sources.map((source) => source.spectrum)), field);
  const factors = merged.map(({ input }) => lowerSideFactors(whole, input.hz));
  return merged.map(({ group, ids, centres }, own) => {
    const excitations = merged.map(({ input }, index) =>
      excitationAt(input, factors[index]!, centres),
    );
    const { margin, index } = bestChannel(own, excitations, centres);
    const judged = verdictOf(margin);
    return {
      group,
      ids,
      margin,
      channel: centres[index]! as Hertz,
      ...judged,
      coveredBy: judged.verdict === "clear" ? null : covering(own, merged, excitations, index),
    };
  });
}
