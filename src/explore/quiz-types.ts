import type { Count } from "../base/index.ts";
import type { Idea, LessonTexture } from "./lesson-types.ts";

/** The two voicings of a question, in the order in which they sound. */
export type QuizSide = "A" | "B";

/** Two textures of which one has clearly more of one idea and hardly differs otherwise. */
export interface QuizPair {
  readonly idea: Idea;
  /** 0 the easiest. */
  readonly level: Count;
  readonly less: LessonTexture;
  readonly more: LessonTexture;
}

/** Pairs to draw from: for each idea one list a level; a list may be empty. */
export type QuizDeck = Readonly<Record<Idea, readonly (readonly QuizPair[])[]>>;

/** One question of a round: what is asked, and which side has more of it. */
export interface QuizTurn {
  readonly idea: Idea;
  readonly moreSide: QuizSide;
}

/** How far a listener has come in one idea. */
export interface QuizStanding {
  readonly level: Count;
  /** Right answers in a row at this level. */
  readonly run: Count;
  readonly asked: Count;
  readonly right: Count;
  /** The smallest difference told apart, in the idea's unit (a ratio for weight). */
  readonly finest: number | null;
}

/** One answer given. */
export interface QuizAnswer {
  readonly turn: QuizTurn;
  readonly pair: QuizPair;
  readonly chosen: QuizSide;
  readonly isRight: boolean;
}

/** A round of questions, as far as it has come. */
export interface QuizRound {
  readonly turns: readonly QuizTurn[];
  readonly answers: readonly QuizAnswer[];
  readonly standings: Readonly<Record<Idea, QuizStanding>>;
  /** Pairs drawn so far in each idea, so that none comes twice before it must. */
  readonly drawn: Readonly<Record<Idea, Count>>;
}
