import type { PitchClass, Ratio, SoundingMidi } from "../base/index.ts";
import { ROOT_SUPPORTS } from "./parncutt-1988-table.ts";

/** Which published set of root supports counts. */
export type RootSupportEdition = keyof typeof ROOT_SUPPORTS;

const CLASSES = 12;
const AMBIGUITY_EXPONENT = 0.5;

/** What the model says of a chord. */
export interface RootAnalysis {
  /** Support of every pitch class as the root, 12 values, C first. */
  readonly weights: Float64Array;
  /** Pitch classes of greatest support; more than one is a tie. */
  readonly roots: readonly PitchClass[];
  /** About how many roots compete; higher is less clear. */
  readonly ambiguity: Ratio;
}

/**
 * Profile of a chord's pitch classes, each counted once however often it sounds.
 * @param pitchClasses - pitch classes or whole-number pitches, any order
 * @returns 12 values, 1 where the class sounds
 * @throws RangeError for a pitch that is no whole number
 */
export function pitchClassProfile(
  pitchClasses: readonly (PitchClass | SoundingMidi)[],
): Float64Array {
  const profile = new Float64Array(CLASSES);
  for (const pitch of pitchClasses) {
    if (!Number.isInteger(pitch))
      throw new RangeError(`a pitch class must be a whole number, got ${pitch}`);
    profile[((pitch % CLASSES) + CLASSES) % CLASSES] = 1;
  }
  return profile;
}

/**
 * Support of each pitch class as the root of a chord.
 * @param profile - how much each of the 12 pitch classes sounds, C first
 * @param edition - set of root supports
 * @returns 12 weights, C first
 * @source Parncutt 1988
 */
export function rootWeights(
  profile: Float64Array,
  edition: RootSupportEdition = 2006,
): Float64Array {
  const supports = ROOT_SUPPORTS[edition];
  return Float64Array.from({ length: CLASSES }, (_, root) =>
    supports.reduce((sum, support, interval) => {
      return sum + support * profile[(root + interval) % CLASSES]!;
    }, 0),
  );
}

/**
 * Ambiguity of a set of root weights.
 * @param weights - 12 weights
 * @returns square root of sum over maximum; 0 when nothing sounds
 * @source Parncutt 1988
 */
export function rootAmbiguity(weights: Float64Array): Ratio {
  const most = weights.reduce((peak, weight) => Math.max(peak, weight), 0);
  if (most === 0) return 0;
  return (weights.reduce((sum, weight) => sum + weight, 0) / most) ** AMBIGUITY_EXPONENT;
}

/**
 * Roots a chord suggests, from its pitch classes alone: octaves and inversions do not matter.
 * @param pitchClasses - pitch classes or whole-number pitches, any order
 * @param edition - set of root supports
 * @returns weights, roots and ambiguity; no roots for no pitches
 * @source Parncutt 1988
 * @example rootAnalysis([0, 4, 7]).ambiguity // 1.8708
 */
export function rootAnalysis(
  pitchClasses: readonly (PitchClass | SoundingMidi)[],
  edition: RootSupportEdition = 2006,
): RootAnalysis {
  const weights = rootWeights(pitchClassProfile(pitchClasses), edition);
  const most = Math.max(...weights);
  const isBest = (weight: number): boolean => most > 0 && weight > most - 1e-9;
  const roots = [...weights.keys()].filter((root) => isBest(weights[root]!)) as PitchClass[];
  return { weights, roots, ambiguity: rootAmbiguity(weights) };
}
