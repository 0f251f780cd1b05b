import type { TextureCurves } from "../../../phrase/index.ts";

/** What a curve says and between what ends it is drawn. */
export interface CurveRow {
  readonly id: keyof TextureCurves;
  readonly name: string;
  readonly meaning: string;
  readonly low: number;
  /** Null: as many as there are players. */
  readonly high: number | null;
  /** What a key changes. */
  readonly step: number;
  readonly unit: string;
}

/** Ends: textures that a band of horns can make; judgement. */
export const curveRows: readonly CurveRow[] = Object.freeze<CurveRow[]>([
  {
    id: "span",
    name: "Span",
    meaning: "From the lowest to the highest note, in semitones",
    low: 0,
    high: 42,
    step: 1,
    unit: "semitones",
  },
  {
    id: "density",
    name: "Density",
    meaning: "Different notes an octave",
    low: 1,
    high: 6,
    step: 0.1,
    unit: "notes an octave",
  },
  {
    id: "weight",
    name: "Weight",
    meaning: "Players sounding",
    low: 1,
    high: null,
    step: 1,
    unit: "players",
  },
]);
