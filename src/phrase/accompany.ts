import { quantity, seededChance, type Count, type Seconds } from "../base/index.ts";
import { dynamics, type Dynamic } from "../band/index.ts";
import type { Divisions, Melody, ReadChange } from "../theory/index.ts";
import { stepsUnderHorns } from "./accompaniment-table.ts";
import type { PlayedRhythmNote, RhythmNote } from "./accompaniment-types.ts";
import { bassLine } from "./bass-line.ts";
import { comping } from "./comping.ts";
import { cymbalPattern } from "./cymbal-pattern.ts";
import type { DynamicMark } from "./phrase-types.ts";
import { dynamicAt } from "./read-phrase.ts";
import { clockOf, type Feel } from "./swing.ts";

/**
 * Bass, piano and drums for a melody, made from its changes. The same seed gives the same notes.
 * @param melody - the melody, repeats written out
 * @param changes - its chords
 * @param seed - any whole number
 * @returns notes in order of onset, then bass, piano, drums
 */
export function accompany(
  melody: Melody,
  changes: readonly ReadChange[],
  seed: Count,
): readonly RhythmNote[] {
  // Each player draws from a sequence of its own, so that one can change without the others.
  return [
    ...bassLine(melody, changes, seededChance(seed)),
    ...comping(melody, changes, seededChance(seed + 1)),
    ...cymbalPattern(melody),
  ]
    .map((note, index) => ({ note, index }))
    .sort((a, b) => a.note.onset - b.note.onset || a.index - b.index)
    .map(({ note }) => note);
}

/**
 * The rhythm section's notes in seconds: beats on time, upbeats with the cymbal, a step softer than
 * the horns.
 * @param melody - time
 * @param notes - what accompany gave
 * @param marks - dynamics of the horns
 * @param feel - swing
 * @returns the notes as played, in the same order
 */
export function performAccompaniment(
  melody: Melody,
  notes: readonly RhythmNote[],
  marks: readonly DynamicMark[],
  feel: Feel,
): readonly PlayedRhythmNote[] {
  const clock = clockOf(melody, feel);
  return notes.map(({ part, sound, onset, duration }) => {
    const start = clock.rhythm(onset);
    const end = clock.rhythm(quantity<Divisions>(onset + duration));
    const dynamic = softer(dynamicAt(marks, onset));
    return { part, sound, onset: start, duration: quantity<Seconds>(end - start), dynamic };
  });
}

function softer(dynamic: Dynamic): Dynamic {
  return dynamics[Math.max(0, dynamics.indexOf(dynamic) - stepsUnderHorns)] ?? dynamic;
}
