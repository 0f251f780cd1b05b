import {
  answerTurn,
  ideasOf,
  questionOf,
  quizRules,
  startRound,
  type Idea,
  type QuizBefore,
  type QuizSide,
} from "../../explore/index.ts";
import { announce } from "../actions/announce.ts";
import { stopSound } from "../actions/hear.ts";
import { freshSeed } from "./prepare-teaching.ts";
import { freshQuiz, teaching, type QuizState } from "./teaching-store.ts";
import { verdictWords } from "./quiz-words.ts";

function setQuiz(change: Partial<QuizState>): void {
  teaching.setState(({ quiz }) => ({ quiz: { ...quiz, ...change } }));
}

/** Asks about an idea, or leaves it out; the last one stays. */
export function askAbout(idea: Idea, isAsked: boolean): void {
  const { asking } = teaching.getState().quiz;
  const next = isAsked ? [...asking, idea] : asking.filter((other) => other !== idea);
  if (next.length > 0) setQuiz({ asking: next });
}

/** Starts a round at the levels reached, or where everybody starts. */
export function beginRound(before?: QuizBefore): void {
  const { deck, quiz } = teaching.getState();
  if (deck === null) return;
  const able = ideasOf(deck);
  const asking = quiz.asking.filter((idea) => able.includes(idea));
  if (asking.length === 0) return;
  const round = startRound(asking, freshSeed(), before);
  setQuiz({ round, question: questionOf(round, deck), answer: null });
}

/** Takes the listener's answer and says whether it was right. */
export function answerWith(chosen: QuizSide): void {
  const { round, question, answer } = teaching.getState().quiz;
  if (round === null || question === null || answer !== null) return;
  stopSound();
  const levels = quizRules[question.turn.idea].margins.length;
  const after = answerTurn(round, question, chosen, levels);
  const given = after.answers[after.answers.length - 1] ?? null;
  setQuiz({ round: after, answer: given });
  if (given === null) return;
  const { verdict, numbers, equal } = verdictWords(given);
  announce(`${verdict} ${numbers} ${equal}`);
}

/** Goes on to the next question, or to the end of the round. */
export function nextQuestion(): void {
  const { deck, quiz } = teaching.getState();
  if (deck === null || quiz.round === null) return;
  stopSound();
  setQuiz({ question: questionOf(quiz.round, deck), answer: null });
}

/** Back to the choice of what is asked. */
export function leaveRound(): void {
  stopSound();
  setQuiz({ ...freshQuiz, asking: teaching.getState().quiz.asking });
}
