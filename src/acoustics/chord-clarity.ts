import type { PitchClass, Ratio } from "../base/index.ts";
import { rootAmbiguity, rootWeights } from "./parncutt-1988.ts";
import type { SonorityAnalysis } from "./parncutt-1994.ts";

const CLASSES = 12;
/**
 * What the sounding bass adds to its own candidature as root: as much as a sounding prime. That the
 * bass counts for more is published; how much is judgement.
 */
const BASS_PRIOR = 10;

/** What the ear is asked to get. */
export interface ChordQuestion {
  /** How much each of the 12 pitch classes sounds, C first; 1 for a plain sounding class. */
  readonly profile: Float64Array;
  readonly root: PitchClass;
  /**
   * Pitch class of the sounding bass (lowest note or bass player), left out where none sounds. It
   * counts as sounding whatever the profile says.
   */
  readonly bass?: PitchClass;
}

/** How surely the ear gets a chord's root. */
export interface ChordClarity {
  /** Support of the given root over that of root and strongest rival: 0.5 is a toss-up. */
  readonly clarity: Ratio;
  /** Support of the given root over the greatest support of any class, at most 1. */
  readonly support: Ratio;
  /** Strongest other candidate. */
  readonly rival: PitchClass;
  /** About how many roots compete. */
  readonly ambiguity: Ratio;
  /** Support of every class, C first. */
  readonly weights: Float64Array;
}

/**
 * Pitch-class profile of what is noticed in a real sound: saliences of all octaves added, the most
 * salient class 1.
 * @param analysis - analysis of the sonority
 * @returns 12 values, C first
 * @source saliences: Parncutt and Strasburger 1994; folding: definition of this project
 */
export function salienceProfile(analysis: SonorityAnalysis): Float64Array {
  const profile = new Float64Array(CLASSES);
  analysis.salience.forEach((value, pitch) => {
    profile[pitch % CLASSES] = profile[pitch % CLASSES]! + value;
  });
  const most = profile.reduce((peak, value) => Math.max(peak, value), 0);
  return most > 0 ? profile.map((value) => value / most) : profile;
}

/**
 * How surely the ear gets a chord's root: Parncutt's root supports of the given root against its
 * strongest rival, the sounding bass counting as a prime more. A rootless voicing is unsure alone
 * and sure over its bass.
 * @param question - profile, root and bass
 * @returns clarity, support, rival, ambiguity and all weights
 * @throws RangeError when nothing sounds
 * @source root supports: R. Parncutt 1988 and 2006; the bass as likelier root: R. Parncutt 1997;
 *   amount of the bass prior and form of the measure: definition of this project
 * @example
 * chordClarity({ profile: Float64Array.of(1, 0, 0, 0, 1, 0, 0, 1, 0, 0, 0, 0), root: 0 }).clarity // 0.643
 */
export function chordClarity(question: ChordQuestion): ChordClarity {
  const { root, bass } = question;
  const profile = question.profile.map((value, at) => (at === bass ? Math.max(1, value) : value));
  const weights = rootWeights(profile);
  if (bass !== undefined) weights[bass] = weights[bass]! + BASS_PRIOR;
  const own = weights[root]!;
  let rival = (root === 0 ? 1 : 0) as PitchClass;
  weights.forEach((weight, candidate) => {
    if (candidate !== root && weight > weights[rival]!) rival = candidate as PitchClass;
  });
  const strongest = weights[rival]!;
  if (own + strongest === 0) throw new RangeError("chord clarity needs a sounding note, got none");
  return {
    clarity: own / (own + strongest),
    support: own / Math.max(own, strongest),
    rival,
    ambiguity: rootAmbiguity(weights),
    weights,
  };
}
