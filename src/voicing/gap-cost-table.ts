/**
 * Cost of two neighbouring stack notes (S1) by the lower note and the gap between them.
 * Direction (wider gaps lower down): D. Huron and P. Sellmer, Music Perception 10(2), 1992.
 * Figures: judgement, to be tuned by ear. Index of `costs` = gap in semitones, 0 to 20; the last
 * entry stands for every wider gap.
 */
export interface GapCostRow {
  /** Lowest and highest MIDI note of the lower note, both included. */
  readonly low: number;
  readonly high: number;
  readonly costs: readonly number[];
  readonly source: string;
}

const source = "direction: Huron and Sellmer 1992; figures: judgement";

/** Rows from the lowest register up; every note is in exactly one. */
export const gapCosts: readonly GapCostRow[] = Object.freeze([
  //                          0  1  2  3  4  5  6  7  8  9 10 11 12 13 14 15 16 17 18 19 20
  {
    low: 0,
    high: 42,
    costs: [0, 8, 8, 8, 8, 8, 8, 0, 3, 3, 3, 3, 0, 1, 1, 1, 1, 3, 3, 3, 3],
    source,
  },
  {
    low: 43,
    high: 47,
    costs: [0, 5, 5, 5, 5, 2, 2, 0, 0, 0, 0, 0, 0, 2, 2, 2, 2, 4, 4, 4, 4],
    source,
  },
  {
    low: 48,
    high: 54,
    costs: [0, 7, 4, 1, 0, 0, 0, 0, 0, 0, 1, 2, 2, 5, 5, 5, 5, 5, 5, 5, 5],
    source,
  },
  {
    low: 55,
    high: 59,
    costs: [0, 3, 1, 0, 0, 0, 0, 0, 1, 1, 3, 3, 3, 7, 7, 7, 7, 7, 7, 7, 7],
    source,
  },
  {
    low: 60,
    high: 127,
    costs: [0, 3, 1, 0, 0, 0, 1, 1, 3, 3, 5, 5, 5, 8, 8, 8, 8, 8, 8, 8, 8],
    source,
  },
]);

/** From this note up a semitone between neighbours costs nothing in the cluster setting. */
export const clusterFrom = 55;
