import {
  pairMargin,
  quizRules,
  type Idea,
  type LessonTexture,
  type QuizAnswer,
  type QuizSide,
} from "../../explore/index.ts";
import { counted } from "../words/counts.ts";
import { spanText } from "../words/interval-words.ts";
import { equalWords, ideaFigure } from "./lesson-words.ts";

/** How an idea is asked about: "wider", "heavier" … */
export const quizWords: Readonly<Record<Idea, { readonly more: string; readonly hint: string }>> =
  Object.freeze({
    span: { more: "wider", hint: "The melody is the same in both: listen to the bottom." },
    weight: {
      more: "heavier",
      hint: "Heard as played, for loudness is part of weight. Listen to how many there are.",
    },
    density: { more: "denser", hint: "Top and bottom are the same: listen to the middle." },
    interleaving: {
      more: "more interlocked",
      hint: "The notes are nearly the same: listen for blocks of one colour, or one blended sound.",
    },
  });

/**
 * The least difference of a level, in words.
 * @param idea - the idea
 * @param level - 0 the easiest
 * @returns e.g. "12 semitones or more apart", "one weighs 1.5 times the other, or more"
 */
export function levelWords(idea: Idea, level: number): string {
  const text = leastText(idea, level);
  return idea === "weight" ? `one weighs ${text} the other, or more` : `${text} or more apart`;
}

/**
 * The least difference of a level, in brief.
 * @param idea - the idea
 * @param level - 0 the easiest
 * @returns e.g. "12 semitones"
 */
export function leastText(idea: Idea, level: number): string {
  return marginText(idea, quizRules[idea].margins[level] ?? 0);
}

/**
 * A difference in one idea, in words.
 * @param idea - the idea
 * @param margin - in the idea's unit; for weight the larger over the smaller
 * @returns e.g. "12 semitones", "1.5 times", "0.8 notes per octave", "0.35"
 */
export function marginText(idea: Idea, margin: number): string {
  switch (idea) {
    case "span":
      return counted(margin, "semitone");
    case "weight":
      return `${Math.round(100 * margin) / 100} times`;
    case "density":
      return `${Math.round(10 * margin) / 10} notes per octave`;
    case "interleaving":
      return margin.toFixed(2);
  }
}

/** The two voicings of a question, by the side on which they are heard. */
export interface Sides {
  readonly A: LessonTexture;
  readonly B: LessonTexture;
}

/**
 * The two voicings by side.
 * @param answer - the question with its pair
 * @returns which texture is heard as A and which as B
 */
export function sidesOf({ turn, pair }: Pick<QuizAnswer, "turn" | "pair">): Sides {
  return turn.moreSide === "A" ? { A: pair.more, B: pair.less } : { A: pair.less, B: pair.more };
}

/**
 * Whether an answer was right, and by what numbers.
 * @param answer - the answer
 * @returns a short verdict, the numbers that decide it, and what was equal
 */
export function verdictWords(answer: QuizAnswer): {
  readonly verdict: string;
  readonly numbers: string;
  readonly equal: string;
} {
  const { turn, pair, isRight } = answer;
  const { idea, moreSide } = turn;
  const other: QuizSide = moreSide === "A" ? "B" : "A";
  const { more } = quizWords[idea];
  const verdict = `${isRight ? "Right" : "No"}: ${moreSide} is ${more}.`;
  const numbers = `${moreSide} has ${valueText(pair.more, idea)}, ${other} ${valueText(pair.less, idea)}: ${marginWords(idea, pairMargin(pair))}.`;
  const { same } = equalWords(pair.less, pair.more, idea);
  return { verdict, numbers, equal: same === "" ? "" : `Both: ${same}.` };
}

function marginWords(idea: Idea, margin: number): string {
  const text = marginText(idea, margin);
  return idea === "weight" ? `${text} the weight` : `${text} more`;
}

/** A value with its unit, as a sentence says it. */
function valueText(texture: LessonTexture, idea: Idea): string {
  const { figure } = ideaFigure(texture, idea);
  switch (idea) {
    case "span":
      return `${counted(texture.span, "semitone")} (${spanText(texture.span)})`;
    case "weight":
      return `${figure} balance units from ${counted(texture.players, "player")}`;
    case "density":
      return `${figure} notes per octave from ${counted(texture.notes, "note")}`;
    case "interleaving":
      return figure;
  }
}
