import type { Count } from "../../base/index.ts";
import type { Clef, Dynamic, InstrumentId, Transposition } from "../../band/index.ts";
import type {
  Divisions,
  Key,
  Metre,
  QuartersPerMinute,
  Repeat,
  SpelledPitch,
} from "../../theory/index.ts";

/** Marks at a note, as players name them. */
export type ArticulationMark =
  | "staccato"
  | "staccatissimo"
  | "tenuto"
  | "accent"
  | "marcato"
  | "soft-accent"
  | "scoop"
  | "plop"
  | "doit"
  | "fall"
  | "breath";

/** One note as it is heard: across bar lines it is one note, the writer ties it. */
export interface ScoreNote {
  /** From the start of the score. */
  readonly onset: Divisions;
  readonly duration: Divisions;
  /** Sounding pitch, spelled. */
  readonly pitch: SpelledPitch;
  /** In the order of the table of articulations; left out when there is none. */
  readonly marks?: readonly ArticulationMark[];
  /** Slurred to the note that follows. */
  readonly isSlurredOn?: true;
}

/** A dynamic or words that a part shows from some time on. */
export type PartDirection =
  | { readonly onset: Divisions; readonly dynamic: Dynamic }
  | { readonly onset: Divisions; readonly words: string };

/** What one player reads and plays. What lies between notes is a rest. */
export interface ScorePart {
  /** Letters, digits, "-", "_" and "."; begins with a letter. */
  readonly id: string;
  readonly name: string;
  readonly abbreviation: string;
  /** Null for an instrument that the band does not know; it is then written as it sounds. */
  readonly instrument: InstrumentId | null;
  readonly transposition: Transposition;
  /** Clef of the player's part. */
  readonly clef: Clef;
  /** In order of onset, low to high at one onset; those that begin together end together. */
  readonly notes: readonly ScoreNote[];
  /** In order of onset. */
  readonly directions: readonly PartDirection[];
}

/** A bar: how long it is and what stands at its beginning. */
export interface ScoreBar {
  readonly length: Divisions;
  readonly metre: Metre;
  /** Null: no key signature, every accidental stands at its note. */
  readonly key: Key | null;
  /** Shorter than the metre because the piece begins before its first beat; bar 0. */
  readonly isPickup?: true;
  /** Boxed letter or number over the bar. */
  readonly rehearsal?: string;
  /** Words over the bar. */
  readonly words?: string;
}

/** A chord symbol and where it begins. */
export interface ScoreHarmony {
  readonly onset: Divisions;
  /** Concert chord in this project's one spelling: "C7(b9)". */
  readonly symbol: string;
}

/** So much longer is the first of two eighth notes than the second. */
export interface SwingRatio {
  readonly first: Count;
  readonly second: Count;
}

/**
 * A score as plain data: one voicing, several of them, or a phrase. Times are whole divisions of a
 * quarter note, pitches are sounding ones; transposition, ties, note values and accidentals are the
 * writer's work.
 */
export interface ScoreModel {
  readonly title: string;
  readonly composer?: string;
  /** Parts of a quarter note. */
  readonly division: Count;
  readonly tempo: QuartersPerMinute;
  /** Word of the tempo mark: "Swing". */
  readonly style?: string;
  /** Left out for even eighth notes. */
  readonly swing?: SwingRatio;
  /** One after the other; at least one. */
  readonly bars: readonly ScoreBar[];
  /** In order of onset, each at another time. */
  readonly harmonies: readonly ScoreHarmony[];
  /** Bars counted from 1, a pickup being 0. */
  readonly repeats: readonly Repeat[];
  /** Top to bottom. */
  readonly parts: readonly ScorePart[];
}
