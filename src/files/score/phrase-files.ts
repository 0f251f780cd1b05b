import type { Phrase, PhrasePerformance } from "../../phrase/index.ts";
import { writeMusicXml, type MusicXmlOptions } from "../musicxml/write-musicxml.ts";
import { scoreOfPhrase, type PhraseScoreOptions } from "./score-of-phrase.ts";

/**
 * A voiced phrase as a MusicXML file: full score with transposed parts, unless asked otherwise.
 * @param phrase - the phrase
 * @param performance - from performPhrase
 * @param options - which players, rhythm section, concert pitch, where chord symbols stand
 * @returns the text of the file, UTF-8
 * @throws RangeError when no player is left
 */
export function musicXmlOfPhrase(
  phrase: Phrase,
  performance: PhrasePerformance,
  options: PhraseScoreOptions & MusicXmlOptions = {},
): string {
  return writeMusicXml(scoreOfPhrase(phrase, performance, options), options);
}
