import type { Count } from "../base/index.ts";

/** Which voicings of a question's atlas are wanted for a line of voicings. */
export interface CandidateWish {
  /**
   * How far a texture lies from what is wanted; cells that lie nearer come first.
   * @param span - semitones
   * @param notes - distinct notes
   * @param players - sounding players
   */
  readonly textureCost: (span: Count, notes: Count, players: Count) => Count;
  /** Rows after which no further cell is opened. */
  readonly rows: Count;
  /** Cells opened at least, as far as there are so many. */
  readonly cells: Count;
  /** Best stacks of each cell. */
  readonly stacksInCell: Count;
  /** Ways to give one stack to the players, the cheapest first. */
  readonly assignmentsOfStack: Count;
}

/** Voicings as plain numbers, one a row. */
export interface Candidates {
  /** Players of the question: the width of a row. */
  readonly players: Count;
  readonly count: Count;
  /** Sounding MIDI note of each player in the question's order, 0 for rest. */
  readonly pitches: Uint8Array;
  /** Cost over the best voicing of the row's own cell. */
  readonly over: Int32Array;
  /** Distance from the texture wanted. */
  readonly texture: Int32Array;
}
