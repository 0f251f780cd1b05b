import {
  demoPhrase,
  readPhrase,
  searchAlternatives,
  searchPhrase,
} from "../../src/phrase/index.ts";
import type { Phrase, PhraseQuestion } from "../../src/phrase/index.ts";
import type { Bench } from "./bench.ts";

/** The shout phrase played so many times: eight bars and some forty notes each. */
function played(times: number): PhraseQuestion {
  const question = demoPhrase("shout");
  const repeats = times < 2 ? [] : [{ fromBar: 0, toBar: 8, times }];
  return { ...question, melody: { ...question.melody, repeats } };
}

function phraseOf(question: PhraseQuestion): Phrase {
  const read = readPhrase(question);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join(" "));
  return read.value;
}

/** Solves in full; tells how much there was to do and when the first answer came. */
function solved(question: PhraseQuestion): string {
  const start = performance.now();
  const phrase = phraseOf(question);
  const search = searchPhrase(phrase);
  let first = 0;
  for (let step = search.next(); ; step = search.next()) {
    if (step.done) {
      const { moments, cost } = step.value;
      const candidates = Math.min(...moments.map((one) => one.candidates));
      return `${moments.length} notes, at least ${candidates} voicings each, first answer after ${first.toFixed(0)} ms, cost ${cost}`;
    }
    if (step.value.answer && first === 0) first = performance.now() - start;
  }
}

function firstAnswer(question: PhraseQuestion): void {
  for (const { answer } of searchPhrase(phraseOf(question))) if (answer) return;
}

function alternatives(): string {
  const question = demoPhrase("shout");
  const search = searchAlternatives(phraseOf(question), question.curves, 3);
  for (let step = search.next(); ; step = search.next())
    if (step.done) return step.value.map(({ label }) => label).join(", ");
}

/** How long a phrase takes for thirteen players: 8 bars within 1 s, 32 within 4 s on one core. */
export const benches: readonly Bench[] = [
  { name: "phrase: 8 bars, 13 players", repeats: 7, run: () => solved(played(1)) },
  { name: "phrase: 8 bars, first answer", repeats: 7, run: () => firstAnswer(played(1)) },
  { name: "phrase: 16 bars, 13 players", repeats: 3, run: () => solved(played(2)) },
  { name: "phrase: 32 bars, 13 players", repeats: 3, run: () => solved(played(4)) },
  { name: "phrase: 32 bars, first answer", repeats: 3, run: () => firstAnswer(played(4)) },
  { name: "phrase: ballad, 8 bars", repeats: 5, run: () => solved(demoPhrase("ballad")) },
  { name: "phrase: three alternatives of 8 bars", repeats: 1, run: alternatives },
];
