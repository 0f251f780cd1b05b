import type { ChordFamily } from "../theory/index.ts";
import type { ApproachTechnique } from "./harmony-types.ts";

/**
 * The dominant that holds a melody note, by the note's semitones above its root; empty where none
 * does. Source: "V7, any dominant form containing the melody note" (elm-music-theory after G.
 * Lindsay; T. Pease & K. Pullig); which form holds which note: common practice.
 */
export const dominantSuffixes: readonly string[] = Object.freeze([
  "7",
  "7(b9)",
  "9",
  "7(#9)",
  "7",
  "9sus4",
  "7(#11)",
  "7",
  "7(b13)",
  "13",
  "7",
  "",
]);

/** How long, how strong and how many approach notes may be. */
export const approachLimits = Object.freeze({
  /** Approach notes in a row chosen automatically at most: a double approach and one more. */
  mostInRow: 3,
  /** Semitones into the next note at most. */
  widestStep: 2,
  source: "short, step into a target: T. Pease & K. Pullig; figures judgement",
});

/** Families that a diminished chord resolves to as their own dominant. */
const restful: ReadonlySet<ChordFamily> = new Set<ChordFamily>([
  "major",
  "sixth",
  "major-seventh",
  "minor",
  "minor-sixth",
  "minor-major-seventh",
]);

/** What the automatic choice looks at. */
export interface ApproachSituation {
  /** The note belongs to the key. */
  readonly isInKey: boolean;
  /** Semitones the melody moves into the target, without direction. */
  readonly step: number;
  readonly target: ChordFamily;
}

/** One row of the choice: where it holds, and what is tried first. */
export interface ApproachRow {
  readonly holds: (situation: ApproachSituation) => boolean;
  readonly order: readonly ApproachTechnique[];
  readonly words: string;
}

/**
 * Which technique is tried first; the first row that holds decides. Source: judgement, after the
 * definitions of T. Pease & K. Pullig and the sixth-diminished practice (notes outside the chord
 * take the diminished chord when they come to rest on a tonic).
 */
export const approachOrder: readonly ApproachRow[] = Object.freeze<ApproachRow[]>([
  {
    holds: ({ isInKey, step }) => !isInKey && step === 1,
    order: ["chromatic", "parallel", "diminished"],
    words: "a note outside the key that moves by a semitone",
  },
  {
    holds: ({ isInKey }) => !isInKey,
    order: ["parallel", "diminished"],
    words: "a note outside the key",
  },
  {
    holds: ({ target }) => restful.has(target),
    order: ["diminished", "dominant", "diatonic", "parallel"],
    words: "a note that comes to rest on the chord after it",
  },
  {
    holds: ({ target }) => target === "dominant" || target === "altered-dominant",
    order: ["diatonic", "dominant", "parallel", "diminished"],
    words: "a note of the key that leads into a dominant",
  },
  {
    holds: () => true,
    order: ["diatonic", "parallel", "dominant", "diminished"],
    words: "a note of the key that leads into the next chord",
  },
]);
