import {
  CONCERT,
  concertReading,
  fifthsAdded,
  keyReading,
  moveSpelled,
  readably,
  readingOf,
  strictReading,
  withoutDoubles,
  type Reading,
} from "../../notation/index.ts";
import {
  fifthsOf,
  readChord,
  spelledToMidi,
  type Chord,
  type Divisions,
  type Key,
  type SpelledPitch,
  type SpelledPitchClass,
} from "../../theory/index.ts";
import { holdingAt } from "../score/score-times.ts";
import type { ScoreHarmony, ScorePart } from "../score/score-model.ts";

/** Which score is written: as it sounds, or as each player reads it. */
export type ScorePitch = "concert" | "written";

/** A chord of the score with the time it begins at. */
export interface PlacedChord {
  readonly onset: Divisions;
  readonly chord: Chord;
}

/**
 * The chords of a score.
 * @param harmonies - chord symbols in this project's spelling
 * @returns the same, read
 * @throws RangeError when one cannot be read
 */
export function placedChords(harmonies: readonly ScoreHarmony[]): readonly PlacedChord[] {
  return harmonies.map(({ onset, symbol }) => {
    const chord = readChord(symbol);
    if (!chord.ok) throw new RangeError(`a chord of a score must be readable, got "${symbol}"`);
    return { onset, chord: chord.value };
  });
}

/** How one part stands on its staff. */
export interface StaffReading {
  /** A sounding pitch as it is written here. */
  readonly pitch: (sounding: SpelledPitch, at: Divisions, key: Key | null) => SpelledPitch;
  /** A chord's root or bass as it is written here. */
  readonly root: (root: SpelledPitchClass, chord: Chord, key: Key | null) => SpelledPitchClass;
  /** Key signature: sharps above 0, flats below. */
  readonly fifths: (key: Key) => number;
}

/**
 * How a part is written: by the key's interval where there is a key signature, else each chord as
 * it reads best, root and notes together.
 * @param part - whose staff
 * @param pitch - concert score or transposed parts
 * @param chords - the score's chords in order
 * @returns what turns sounding into written spelling
 * @source W3C MusicXML 4.0, transpose and concert-score elements
 */
export function staffReading(
  part: Pick<ScorePart, "transposition">,
  pitch: ScorePitch,
  chords: readonly PlacedChord[],
): StaffReading {
  const { transposition } = part;
  const isConcert = pitch === "concert" || transposition.chromatic === 0;
  const strict = isConcert ? concertReading(transposition) : strictReading(transposition);
  const readingFor = (chord: Chord | undefined, key: Key | null): Reading => {
    if (isConcert) return strict;
    if (key !== null) return keyReading(strict, key);
    return chord === undefined ? strict : readingOf(chord, transposition);
  };
  return {
    pitch: (sounding, at, key) => {
      const chord = holdingAt(chords, at)?.chord;
      const moved = moveSpelled(sounding, readingFor(chord, key));
      if (isConcert) return moved;
      const isFree = key === null && chord !== undefined && chord.family !== "no-chord";
      return isFree ? readably(moved, spelledToMidi(sounding), chord) : withoutDoubles(moved);
    },
    root: (root, chord, key) => {
      const reading = readingFor(chord, key);
      if (reading.steps === CONCERT.steps && reading.semitones === CONCERT.semitones) return root;
      const { letter, alteration } = withoutDoubles(moveSpelled({ ...root, octave: 4 }, reading));
      return { letter, alteration };
    },
    fifths: (key) => {
      if (isConcert) return fifthsOf(key);
      return fifthsOf(key) + fifthsAdded(keyReading(strict, key));
    },
  };
}
