import type { MelodyStyle } from "../theory/index.ts";

/**
 * What the rhythm section plays by style. Source: common practice, no single source (ride pattern
 * with the skip beat on 2 and 4, hi-hat on 2 and 4; bass in two for ballads; root and fifth with an
 * upbeat in latin); walking bass after "How to create a walking bass line" (dummies.com): root on one,
 * chord or scale tones between, a leading tone to the next root last.
 */
export interface StyleRow {
  readonly bass: "walking" | "in-two" | "latin";
  /** Strokes on the ride within a pair of beats, in halves of a beat. */
  readonly ride: readonly number[];
  /** Piano hits of a bar of four beats, in halves of a beat; one row is drawn for each bar. */
  readonly piano: readonly (readonly number[])[];
  /** How long a piano hit is held, in beats; "change" until the chord changes. */
  readonly held: number | "change";
}

/** Rows by style. */
export const styleRows: Readonly<Record<MelodyStyle, StyleRow>> = Object.freeze({
  swing: Object.freeze({
    bass: "walking",
    ride: [0, 2, 3],
    piano: [[0, 3], [3], [1, 5], [3, 7], [2, 5], [1, 4], [0, 5]],
    held: 0.5,
  }),
  straight: Object.freeze({
    bass: "in-two",
    ride: [0, 1, 2, 3],
    piano: [
      [0, 4],
      [0, 3, 6],
      [2, 6],
    ],
    held: 1,
  }),
  ballad: Object.freeze({ bass: "in-two", ride: [0, 2], piano: [[0]], held: "change" }),
  latin: Object.freeze({
    bass: "latin",
    ride: [0, 1, 2, 3],
    piano: [
      [0, 3, 6],
      [2, 5],
      [1, 4, 7],
    ],
    held: 0.75,
  }),
});

/** Where the bass and the piano's chord lie. Source: judgement; E1 is the lowest string. */
export const rhythmRanges = Object.freeze({
  bass: Object.freeze({ low: 28, high: 50, start: 38 }),
  piano: Object.freeze({ low: 51, high: 72 }),
});

/** Dynamic steps under the horns. Source: judgement. */
export const stepsUnderHorns = 1;
