import { quantity, type Semitones } from "../base/index.ts";

/**
 * Lowest recommended MIDI note of the LOWER note of an interval, index = interval in semitones
 * (0 to 16; 0 and 12 carry no limit and hold 0). Guidance, not law: see `source` of each row.
 */
export interface LowIntervalRow {
  readonly id: string;
  readonly name: string;
  readonly limits: readonly number[];
  readonly source: string;
}

/** The limits used by default (V1 of the sources, with the minor sixth at F2). */
export const lowIntervalLimits: LowIntervalRow = Object.freeze({
  id: "arranging",
  name: "Arranging-course limits",
  limits: Object.freeze([0, 52, 51, 48, 46, 46, 46, 34, 41, 41, 41, 41, 0, 40, 39, 36, 34]),
  source:
    "G. Lindsay, Jazz Arranging Techniques (2005), as carried by the elm-music-theory library " +
    "(commit cbf09f1); minor sixth F2 (41) as in two further published lists",
});

/** Semitones by which the limits give way at a dynamic; judgement, after R. Hoffmann, "Low Interval Limits". */
export const lowIntervalTolerance = Object.freeze({
  f: quantity<Semitones>(1),
  mf: quantity<Semitones>(2),
  p: quantity<Semitones>(3),
  strict: quantity<Semitones>(0),
  source: "direction: R. Hoffmann, Low Interval Limits (soft tolerates more); figures: judgement",
});
