import type { Db, PitchClass, Ratio } from "../base/index.ts";

const CLASSES = 12;
/** At the masked threshold less the spread of players a tone counts for nothing … */
const SILENT_AT_DB = -3;
/** … and from where a source is clear it counts fully. */
const FULL_AT_DB = 5;

/** A sounding note as it is heard among the others. */
export interface HeardTone {
  readonly pitchClass: PitchClass;
  /** Margin of the note, all players on it taken as one source. */
  readonly margin: Db;
}

/** Which tones of a chord reach the ear. */
export interface ChordIdentity {
  /** Least heard of the tones that make the chord, 0 lost to 1 clear. */
  readonly identity: Ratio;
  /** That tone; null when none is asked for. */
  readonly weakest: PitchClass | null;
}

/**
 * Pitch-class profile of what is heard: each class by its best note, 0 from 3 dB under the masked
 * threshold, 1 from 5 dB over it.
 * @param tones - sounding notes with their margins
 * @returns 12 values, C first, for chord clarity and identity
 * @source definition of this project on the margins of audibility
 */
export function heardProfile(tones: readonly HeardTone[]): Float64Array {
  const profile = new Float64Array(CLASSES);
  for (const { pitchClass, margin } of tones) {
    const heard = (margin - SILENT_AT_DB) / (FULL_AT_DB - SILENT_AT_DB);
    const share = Math.min(1, Math.max(0, heard));
    profile[pitchClass] = Math.max(profile[pitchClass]!, share);
  }
  return profile;
}

/**
 * How surely the ear gets the chord: a chord is as clear as the least heard of the tones that make
 * it (third and seventh, say, and the root where no bass sounds).
 * @param profile - what is heard of each class, C first
 * @param required - pitch classes that make the chord
 * @returns identity and the tone to blame
 * @source definition of this project
 */
export function chordIdentity(
  profile: Float64Array,
  required: readonly PitchClass[],
): ChordIdentity {
  let weakest: PitchClass | null = null;
  let identity = 1;
  for (const pitchClass of required)
    if (weakest === null || profile[pitchClass]! < identity) {
      weakest = pitchClass;
      identity = profile[pitchClass]!;
    }
  return { identity, weakest };
}
