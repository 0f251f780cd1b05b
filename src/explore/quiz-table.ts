import { quantity, type Count, type Ratio, type Semitones } from "../base/index.ts";
import type { Idea } from "./lesson-types.ts";

/** What the pairs of one idea must and may differ by. */
export interface QuizRule {
  readonly idea: Idea;
  /** Whether `margins` are differences in the idea's unit, or the larger value over the smaller. */
  readonly by: "difference" | "ratio";
  /** Least difference of a pair, the easiest level first. */
  readonly margins: readonly number[];
  /** Most differences in everything else; Infinity where it follows from the idea itself. */
  readonly most: QuizTolerance;
}

/** How far two textures may differ in what is not asked. */
export interface QuizTolerance {
  readonly span: Semitones;
  readonly notes: Count;
  readonly players: Count;
  /** Larger weight over smaller. */
  readonly weight: Ratio;
  readonly interleaving: Ratio;
}

const span = (value: number) => quantity<Semitones>(value);

/**
 * Levels and tolerances. Density follows from span and notes: with one of them held it moves with
 * the other, so it is not held beside them. The margins are the project's own judgement.
 */
export const quizRules: Readonly<Record<Idea, QuizRule>> = Object.freeze({
  span: {
    idea: "span",
    by: "difference",
    margins: [18, 12, 8, 5, 3],
    most: { span: span(Infinity), notes: 0, players: 0, weight: 1.1, interleaving: 0.2 },
  },
  weight: {
    idea: "weight",
    by: "ratio",
    margins: [2.5, 1.9, 1.5, 1.3, 1.15],
    most: { span: span(1), notes: 0, players: Infinity, weight: Infinity, interleaving: 0.25 },
  },
  density: {
    idea: "density",
    by: "difference",
    margins: [2.4, 1.7, 1.2, 0.8, 0.5],
    most: { span: span(1), notes: Infinity, players: 0, weight: 1.1, interleaving: 0.2 },
  },
  interleaving: {
    idea: "interleaving",
    by: "difference",
    margins: [0.7, 0.5, 0.35, 0.25, 0.15],
    most: { span: span(0), notes: 0, players: 0, weight: 1.1, interleaving: Infinity },
  },
} satisfies Readonly<Record<Idea, QuizRule>>);

/** Pairs kept of each idea and level. */
export const pairsALevel = 12;
/** Questions of a round. */
export const turnsARound = 12;
/** Right answers in a row that lead to a smaller difference; one wrong answer leads back. */
export const runToHarder = 2;
