import type { LessonPart, QuizDeck } from "../../explore/index.ts";
import type { CellKey, Question } from "../../voicing/index.ts";

/** What the lessons ask of their worker: everything about one question. */
export interface TeachingRequest {
  readonly question: Question;
  /** The texture the learner looks at; pairs near it come first. */
  readonly near: CellKey;
  /** Makes the quiz's pairs; the same seed gives the same ones. */
  readonly seed: number;
}

/** What the worker tells, in this order. */
export type TeachingReply =
  /** Span, weight and density; interleaving takes the other layers. */
  | { readonly kind: "first-parts"; readonly parts: readonly LessonPart[] }
  | { readonly kind: "all-parts"; readonly parts: readonly LessonPart[] }
  | { readonly kind: "deck"; readonly deck: QuizDeck }
  | { readonly kind: "failed"; readonly message: string };
