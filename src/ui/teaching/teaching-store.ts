import { createStore, useStore } from "zustand";
import type {
  Idea,
  LessonPart,
  QuizAnswer,
  QuizDeck,
  QuizQuestion,
  QuizRound,
} from "../../explore/index.ts";
import type { Asked } from "../state/page-state.ts";

/** What the lessons show: one idea, or the quiz. */
export type Topic = Idea | "quiz";

/** The quiz as far as it has come. */
export interface QuizState {
  /** Ideas the listener wants to be asked about. */
  readonly asking: readonly Idea[];
  readonly round: QuizRound | null;
  /** The question on the page; stays while its answer is explained. */
  readonly question: QuizQuestion | null;
  /** The answer to it, once given. */
  readonly answer: QuizAnswer | null;
}

/** Everything the lessons show. */
export interface TeachingState {
  readonly topic: Topic;
  /** Large type, for a room full of people. */
  readonly isRoom: boolean;
  /** The question the lessons are about; null before one is answered. */
  readonly asked: Asked | null;
  /** Null while they are worked out; interleaving comes last. */
  readonly parts: readonly LessonPart[] | null;
  readonly deck: QuizDeck | null;
  readonly fault: string | null;
  /** Where the learner has moved the right voicing, by idea. */
  readonly moved: Readonly<Partial<Record<Idea, number>>>;
  /** Level chosen by the learner, by idea; unless chosen, weight is heard as played. */
  readonly matched: Readonly<Partial<Record<Idea, boolean>>>;
  /** Whether a move of the right voicing sounds at once. */
  readonly soundsMoves: boolean;
  /** What was asked to sound last, in turn: "Left", "B". */
  readonly heard: readonly string[];
  readonly quiz: QuizState;
}

const allIdeas: readonly Idea[] = ["span", "weight", "density", "interleaving"];

/** A quiz not begun. */
export const freshQuiz: QuizState = {
  asking: allIdeas,
  round: null,
  question: null,
  answer: null,
};

/** Apart from the page's state: nothing here changes the work, nothing is to undo. */
export const teaching = createStore<TeachingState>()(() => ({
  topic: "span",
  isRoom: false,
  asked: null,
  parts: null,
  deck: null,
  fault: null,
  moved: {},
  matched: {},
  soundsMoves: true,
  heard: [],
  quiz: freshQuiz,
}));

/**
 * Reads a part of the lessons' state in a component.
 * @param pick - the part
 * @returns the part
 */
export function useTeaching<T>(pick: (state: TeachingState) => T): T {
  return useStore(teaching, pick);
}
