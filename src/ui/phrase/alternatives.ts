import type { PhraseAlternative, PhraseQuestion } from "../../phrase/index.ts";
import { take } from "../actions/steps.ts";
import { announce } from "../actions/announce.ts";
import { session } from "../store.ts";
import { counted } from "../words/counts.ts";
import { askAlternatives } from "./phrase-client.ts";
import { phraseStore } from "./phrase-store.ts";
import { hearOfSearch } from "./search-news.ts";

/** How many answers are offered. */
const wanted = 3;

/** The question that the alternatives on offer belong to. */
let offeredFor: PhraseQuestion | null = null;

/** Whether two questions ask the same but for their curves. */
function isSameButCurves(one: PhraseQuestion, other: PhraseQuestion): boolean {
  return (Object.keys(one) as (keyof PhraseQuestion)[]).every(
    (key) => key === "curves" || one[key] === other[key],
  );
}

/**
 * The alternatives on offer, as long as they answer the question.
 * @param alternatives - what was on offer
 * @param question - what is asked now
 * @returns the same, or null
 */
export function stillOffered(
  alternatives: readonly PhraseAlternative[] | null,
  question: PhraseQuestion,
): readonly PhraseAlternative[] | null {
  if (alternatives === null || offeredFor === null) return null;
  if (!isSameButCurves(question, offeredFor)) return null;
  const isOne = alternatives.some(({ curves }) => curves === question.curves);
  return isOne || question.curves === offeredFor.curves ? alternatives : null;
}

/** Looks for other answers to the whole phrase. */
export function findAlternatives(): void {
  const work = session().phrase;
  if (work === null) return;
  const { question } = work;
  phraseStore.setState({ searching: { done: 0, all: 1 }, fault: null });
  askAlternatives(question, wanted, (reply) => {
    if (reply.kind !== "alternatives") return hearOfSearch(reply);
    offeredFor = question;
    phraseStore.setState({ alternatives: reply.alternatives, searching: null });
    announce(`${counted(reply.alternatives.length, "answer")} to choose from.`);
  });
}

/**
 * The curves that an alternative stands for; of the first one those that were drawn.
 * @param alternative - one of those on offer
 * @returns curves
 */
function curvesOf({ id, curves }: PhraseAlternative): PhraseQuestion["curves"] {
  return id === "as-drawn" && offeredFor !== null ? offeredFor.curves : curves;
}

/** Whether an alternative is the one in view. */
export function isTaken(alternative: PhraseAlternative, question: PhraseQuestion): boolean {
  return curvesOf(alternative) === question.curves;
}

/**
 * Takes one of the alternatives: its curves become the phrase's, so that what is solved again later
 * stays like it.
 * @param alternative - one of those on offer
 */
export function takeAlternative(alternative: PhraseAlternative): void {
  const now = session();
  if (now.phrase === null) return;
  const question = { ...now.phrase.question, curves: curvesOf(alternative) };
  take({
    ...now,
    phrase: { ...now.phrase, question, alternative: 0 },
    step: `phrase: ${alternative.label.toLowerCase()}`,
  });
}
