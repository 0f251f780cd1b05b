import type { Count, Problem, Quantity, SoundingMidi } from "../base/index.ts";
import type { Chord } from "./chord-types.ts";
import type { SpelledPitch, SpelledPitchClass } from "./spelled-pitch-types.ts";

/**
 * Musical time as a whole number of equal parts of a quarter note; a melody says how many parts a
 * quarter has, so triplets and dots are exact.
 */
export type Divisions = Quantity<"divisions of a quarter note">;

/** Tempo. */
export type QuartersPerMinute = Quantity<"quarter notes per minute">;

/** Beats a bar and the note value that is one beat: 4 and 4, 3 and 4, 6 and 8. */
export interface Metre {
  readonly beats: Count;
  readonly beatType: Count;
}

/** Major or minor key on a tonic. */
export interface Key {
  readonly tonic: SpelledPitchClass;
  readonly mode: "major" | "minor";
}

/** How eighth notes and the rhythm section feel. */
export type MelodyStyle = "swing" | "straight" | "ballad" | "latin";

/** So many notes in the time of so many: a triplet is 3 in the time of 2. */
export interface Tuplet {
  readonly notes: Count;
  readonly inTimeOf: Count;
}

/** One written note. */
export interface MelodyNote {
  /** Stable and unique within the melody; choices and locks refer to it. */
  readonly id: string;
  /** From the start of the melody, a pickup included. */
  readonly onset: Divisions;
  readonly duration: Divisions;
  /** Sounding pitch, spelled. */
  readonly pitch: SpelledPitch;
  /** Tied to the note that follows: the two are heard as one. */
  readonly isTied: boolean;
  /** Set where the note is written as part of a tuplet. */
  readonly tuplet?: Tuplet;
}

/** A chord symbol as typed, and where it begins. It holds until the next one. */
export interface ChordChange {
  readonly onset: Divisions;
  readonly text: string;
}

/** A last bar or bars that differ from pass to pass. */
export interface Ending {
  readonly fromBar: Count;
  readonly toBar: Count;
  /** 1 for the first time, 2 for the second … */
  readonly passes: readonly Count[];
}

/** Bars that are played more than once. Both bars included; the pickup is bar 0. */
export interface Repeat {
  readonly fromBar: Count;
  readonly toBar: Count;
  readonly times: Count;
  readonly endings?: readonly Ending[];
}

/** A melody with its changes, as plain data. What lies between notes is a rest. */
export interface Melody {
  readonly title: string;
  /** Parts of a quarter note that all times are counted in. */
  readonly division: Count;
  readonly metre: Metre;
  readonly key: Key;
  readonly tempo: QuartersPerMinute;
  readonly style: MelodyStyle;
  /** Length of the pickup before bar 1; 0 when there is none. */
  readonly pickup: Divisions;
  /** Length of the whole, pickup and rests at the end included. */
  readonly length: Divisions;
  /** In order of onset, none overlapping. */
  readonly notes: readonly MelodyNote[];
  /** In order of onset. */
  readonly changes: readonly ChordChange[];
  readonly repeats: readonly Repeat[];
}

/** A note as it is heard: tied notes are one. */
export interface HeardNote {
  /** Id of the first written note. */
  readonly id: string;
  /** Ids of all written notes that make it. */
  readonly writtenIds: readonly string[];
  readonly onset: Divisions;
  readonly duration: Divisions;
  readonly pitch: SpelledPitch;
  readonly sounding: SoundingMidi;
}

/** A chord and the time it holds. */
export interface ReadChange {
  readonly onset: Divisions;
  readonly end: Divisions;
  readonly chord: Chord;
}

/** A place in a melody as players count it. */
export interface MelodyPlace {
  /** 0 in the pickup, else from 1. */
  readonly bar: Count;
  /** Beat of the bar, from 1; in a pickup counted as the end of a full bar. */
  readonly beat: Count;
  /** How far into the beat, as a fraction in lowest terms; 0/1 on the beat. */
  readonly part: readonly [numerator: Count, denominator: Count];
}

/** What is wrong with a melody, and in which bar. */
export interface MelodyProblem extends Problem {
  /** Bar the trouble is in, 0 for the pickup; undefined when it concerns the whole melody. */
  readonly bar?: Count;
  readonly noteId?: string;
}

/** A value, or everything that kept us from having one. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly MelodyProblem[] };

/** A melody found in order: what is heard and the chords under it. */
export interface ReadMelody {
  readonly notes: readonly HeardNote[];
  /** Chords with the time they hold, in order, no gaps after the first. */
  readonly changes: readonly ReadChange[];
}
