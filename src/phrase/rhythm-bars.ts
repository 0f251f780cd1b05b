import { quantity, type Count } from "../base/index.ts";
import {
  barCount,
  barLength,
  barStart,
  beatLength,
  type Chord,
  type Divisions,
  type Melody,
  type ReadChange,
} from "../theory/index.ts";

/** A bar as the rhythm section counts it. */
export interface RhythmBar {
  readonly start: Divisions;
  readonly beat: Divisions;
  readonly beats: Count;
  readonly end: Divisions;
}

/**
 * The bars the rhythm section plays: all but the pickup.
 * @param melody - the melody, repeats written out
 * @returns bars in order
 */
export function rhythmBars(melody: Melody): readonly RhythmBar[] {
  const beat = beatLength(melody);
  const length = barLength(melody);
  return Array.from({ length: barCount(melody) }, (_, index) => {
    const start = barStart(melody, index + 1);
    const end = quantity<Divisions>(Math.min(start + length, melody.length));
    return { start, beat, beats: Math.floor((end - start) / beat), end };
  });
}

/**
 * The chord at a time.
 * @param changes - chords in order
 * @param at - time
 * @returns the chord; undefined before the first, and where there is none
 */
export function chordAt(changes: readonly ReadChange[], at: Divisions): Chord | undefined {
  const chord = changes.filter(({ onset }) => onset <= at).at(-1)?.chord;
  return chord?.family === "no-chord" ? undefined : chord;
}
