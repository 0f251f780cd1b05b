import { quantity, type SoundingMidi } from "../base/index.ts";
import type { MomentLock, NoteLock, Phrase, PhraseAnswer } from "./phrase-types.ts";

/**
 * Locks that hold a player's whole line as it is in an answer.
 * @param phrase - the phrase
 * @param answer - the answer
 * @param playerId - whose line
 * @returns one lock a moment; none for a player who is not in the phrase
 */
export function lockLine(
  phrase: Phrase,
  answer: PhraseAnswer,
  playerId: string,
): readonly NoteLock[] {
  const index = phrase.players.findIndex(({ id }) => id === playerId);
  if (index < 0) return [];
  return answer.moments.map(({ moment, pitches }) => {
    const pitch = pitches[index] ?? 0;
    const sounding = pitch === 0 ? ("rest" as const) : quantity<SoundingMidi>(pitch);
    return { momentId: moment.id, playerId, sounding };
  });
}

/**
 * A lock that holds the whole voicing of a moment as it is in an answer.
 * @param phrase - the phrase
 * @param answer - the answer
 * @param momentId - which moment
 * @returns the lock; undefined when there is no such moment
 */
export function lockMoment(
  phrase: Phrase,
  answer: PhraseAnswer,
  momentId: string,
): MomentLock | undefined {
  const voiced = answer.moments.find(({ moment }) => moment.id === momentId);
  if (!voiced) return undefined;
  const pitches = phrase.players.flatMap(({ id }, index): [string, SoundingMidi][] => {
    const pitch = voiced.pitches[index] ?? 0;
    return pitch === 0 ? [] : [[id, quantity<SoundingMidi>(pitch)]];
  });
  return { momentId, pitches: Object.fromEntries(pitches) };
}
