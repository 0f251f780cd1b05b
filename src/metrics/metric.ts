import type { SoundingMidi } from "../base/index.ts";
import type { Chord } from "../theory/index.ts";
import type { Dynamic } from "../band/index.ts";
import type { Voicing } from "../voicing/index.ts";

/** What surrounds a voicing when it is measured. */
export interface Situation {
  readonly chord: Chord;
  readonly lead: SoundingMidi;
  readonly dynamic: Dynamic;
  readonly bassSounds: boolean;
}

/** One measured value, with the words the page shows. */
export interface Measured {
  /** The number in the metric's unit, or null where it is not defined (say why in `text`). */
  readonly value: number | null;
  /** The value for people, without the unit: "33", "0.50", "none". */
  readonly text: string;
  /** One short sentence about this voicing: "Widest 16, F2 to A3". */
  readonly detail: string;
  /** The notes and players to point at when the user asks who is to blame; empty when nobody is. */
  readonly notes: readonly SoundingMidi[];
  readonly playerIds: readonly string[];
}

/** One measure of a voicing: one file, one line of the registry, one test. */
export interface Metric {
  /** Stable id, kebab case: "span", "density", "weight". */
  readonly id: string;
  readonly label: string;
  /** Unit in words, as the page shows it: "semitones", "notes per octave". */
  readonly unit: string;
  /** What it tells, in one sentence. */
  readonly meaning: string;
  /** Author, year, or "definition of this project". */
  readonly source: string;
  readonly better: "higher" | "lower" | "neither";
  /** Ends of the scale that the page draws. */
  readonly axis: readonly [low: number, high: number];
  /** True when the value comes from the listener's model rather than from the notes alone. */
  readonly isHeard: boolean;
  readonly measure: (voicing: Voicing, situation: Situation) => Measured;
}
