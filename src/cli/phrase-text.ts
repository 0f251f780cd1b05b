import { checkLines, type Phrase, type VoicedMoment } from "../phrase/index.ts";
import { pitchName } from "../theory/index.ts";
import { quantity, type SoundingMidi } from "../base/index.ts";
import { inColumns } from "./columns.ts";
import type { NamedAnswer } from "./phrase-data.ts";
import { melodyPlace } from "./phrase-place.ts";

/**
 * A voiced phrase for people: one row a moment, one column a player, then what is to be said of the
 * lines.
 * @param phrase - the phrase
 * @param named - the answer
 * @returns lines
 */
export function answerText(phrase: Phrase, { label, answer, performance }: NamedAnswer): string {
  const { players, melody } = phrase;
  const head = ["bar", "beat", "chord", "span", "notes", ...players.map(({ id }) => id)];
  const rows = answer.moments.map((voiced) => momentRow(phrase, voiced));
  const remarks = checkLines(phrase, answer, performance.parts).flatMap(
    ({ player, remarks: own }) => own.map(({ text }) => `  ${player.name}: ${text}\n`),
  );
  return [
    `${melody.title === "" ? "Melody" : melody.title}: ${label.toLowerCase()}, cost ${answer.cost}\n`,
    inColumns([head, ...rows]),
    ...answer.remarks.map(({ momentId, text }) => `  ${placeName(phrase, momentId)}: ${text}\n`),
    ...remarks,
  ].join("");
}

function momentRow({ players, melody }: Phrase, voiced: VoicedMoment): readonly string[] {
  const { moment, pitches, span, notes } = voiced;
  const { bar, beat } = melodyPlace(melody, moment.onset);
  const names = players.map((_, index) => {
    const pitch = pitches[index] ?? 0;
    return pitch === 0 ? "-" : pitchName(quantity<SoundingMidi>(pitch), moment.chord);
  });
  return [String(bar), String(beat), moment.chord.symbol, String(span), String(notes), ...names];
}

function placeName({ moments, melody }: Phrase, momentId: string): string {
  const found = moments.find(({ moment }) => moment.id === momentId);
  if (found === undefined) return momentId;
  const { bar, beat } = melodyPlace(melody, found.moment.onset);
  return `Bar ${bar}, beat ${beat}`;
}
