import type { SectionId } from "../band/index.ts";

/** [share of the phrase 0 to 1, level 0 to 1]; a repeated share makes a step. */
export type ShapePoint = readonly [share: number, level: number];

/** A shape of the texture over the phrase. Levels run from the least to the most of the band. */
export interface TexturePresetRow {
  readonly id: TexturePresetId;
  readonly label: string;
  readonly meaning: string;
  readonly span: readonly ShapePoint[];
  readonly density: readonly ShapePoint[];
  readonly weight: readonly ShapePoint[];
  /** Sections that take turns, two bars each; empty when everyone may play throughout. */
  readonly turns: readonly (readonly SectionId[])[];
}

/** Shapes to start from. */
export type TexturePresetId = "level" | "build" | "terraced" | "call-and-answer" | "thin-out";

/**
 * Ends of the levels: span in semitones, density in notes an octave; weight runs from three players,
 * or all when there are fewer, to everyone. Source: judgement; a four-way close chord has some four
 * notes an octave (W1 and W29 of common handbooks: 3 to 4.5), a wide tutti two and a half.
 */
export const textureEnds = Object.freeze({
  span: Object.freeze([11, 33] as const),
  density: Object.freeze([2.2, 4.2] as const),
  fewestPlayers: 3,
});

/**
 * Source: shapes are common practice. The peak at two thirds follows the usual place of a climax
 * (0.618 to 0.67 in the literature on high points; disputed, so only a shape to start from).
 */
export const texturePresets: readonly TexturePresetRow[] = Object.freeze<TexturePresetRow[]>([
  {
    id: "level",
    label: "Level",
    meaning: "The same full texture throughout.",
    span: [[0, 0.7]],
    density: [[0, 0.3]],
    weight: [[0, 1]],
    turns: [],
  },
  {
    id: "build",
    label: "Build to a peak at two thirds",
    meaning: "Starts close and light, opens and gathers players up to two thirds, then settles.",
    span: [
      [0, 0],
      [0.67, 1],
      [1, 0.55],
    ],
    density: [
      [0, 0.9],
      [0.67, 0.1],
      [1, 0.3],
    ],
    weight: [
      [0, 0.2],
      [0.67, 1],
      [1, 0.7],
    ],
    turns: [],
  },
  {
    id: "terraced",
    label: "Terraced",
    meaning: "Three steps, each wider and heavier than the one before.",
    span: [
      [0, 0.05],
      [0.33, 0.05],
      [0.33, 0.45],
      [0.67, 0.45],
      [0.67, 0.95],
    ],
    density: [
      [0, 0.8],
      [0.33, 0.8],
      [0.33, 0.45],
      [0.67, 0.45],
      [0.67, 0.15],
    ],
    weight: [
      [0, 0.2],
      [0.33, 0.2],
      [0.33, 0.6],
      [0.67, 0.6],
      [0.67, 1],
    ],
    turns: [],
  },
  {
    id: "call-and-answer",
    label: "Call and answer",
    meaning: "Saxes and brass take turns, two bars each.",
    span: [[0, 0.25]],
    density: [[0, 0.7]],
    weight: [[0, 1]],
    turns: [["saxes"], ["trumpets", "trombones"]],
  },
  {
    id: "thin-out",
    label: "Start tutti and thin out",
    meaning: "Everyone at first, then fewer players and a closer sound.",
    span: [
      [0, 1],
      [0.3, 0.9],
      [1, 0.05],
    ],
    density: [
      [0, 0.1],
      [0.3, 0.15],
      [1, 0.8],
    ],
    weight: [
      [0, 1],
      [0.3, 0.9],
      [1, 0.1],
    ],
    turns: [],
  },
]);
