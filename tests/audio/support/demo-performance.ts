import { demoPhrase, performPhrase } from "../../../src/phrase/index.ts";
import type { DemoRow, Phrase, PhrasePerformance } from "../../../src/phrase/index.ts";
import { phraseOf, solved } from "../../phrase/support/phrases.ts";

/** One of the phrases to start from, voiced and performed. */
export function demoPlayed(id: DemoRow["id"]): {
  readonly phrase: Phrase;
  readonly playing: PhrasePerformance;
} {
  const phrase = phraseOf(demoPhrase(id));
  return { phrase, playing: performPhrase(phrase, solved(phrase).answer) };
}
