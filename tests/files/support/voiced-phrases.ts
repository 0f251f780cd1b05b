import {
  demoPhrase,
  performPhrase,
  searchPhrase,
  type Phrase,
  type PhraseAnswer,
  type PhrasePerformance,
} from "../../../src/phrase/index.ts";
import type { Melody } from "../../../src/theory/index.ts";
import { phraseOf, questionOf, solved } from "../../phrase/support/phrases.ts";

/** A phrase with its parts. */
export interface Voiced {
  readonly phrase: Phrase;
  readonly answer: PhraseAnswer;
  readonly performance: PhrasePerformance;
}

function firstAnswer(phrase: Phrase): PhraseAnswer {
  for (const { answer } of searchPhrase(phrase)) if (answer) return answer;
  throw new Error("no answer");
}

const voiced = (phrase: Phrase, answer: PhraseAnswer): Voiced => ({
  phrase,
  answer,
  performance: performPhrase(phrase, answer),
});

/** A melody voiced for four horns, as soon as there is an answer. */
export function voicedMelody(melody: Melody): Voiced {
  const phrase = phraseOf(questionOf(melody));
  return voiced(phrase, firstAnswer(phrase));
}

/** A phrase of our own, voiced in full for the whole band. */
export function voicedDemo(id: "shout" | "ballad"): Voiced {
  const phrase = phraseOf(demoPhrase(id));
  return voiced(phrase, solved(phrase).answer);
}
