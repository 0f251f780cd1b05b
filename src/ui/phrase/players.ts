import type { Player } from "../../band/index.ts";
import type { PhraseQuestion } from "../../phrase/index.ts";

/** No section plays in a phrase of players who all left. */
const sections = new Set(["trumpets", "trombones", "saxes", "rhythm"]);

/**
 * The same phrase for another band: the weight curve keeps its shape, what was held or said of
 * players who are gone falls away.
 * @param question - the phrase
 * @param players - the new band
 * @returns what changes in the question
 */
export function playersTaken(
  question: PhraseQuestion,
  players: readonly Player[],
): Partial<PhraseQuestion> {
  const ids = new Set(players.map(({ id }) => id));
  const factor = players.length / Math.max(1, question.players.length);
  const { curves, turns, locks } = question;
  return {
    players,
    curves: {
      ...curves,
      weight: curves.weight.map((point) => ({
        ...point,
        value: Math.max(1, Math.min(players.length, point.value * factor)),
      })),
    },
    turns: turns.filter(({ who }) => ids.has(who) || sections.has(who)),
    locks: {
      notes: locks.notes.filter(({ playerId }) => ids.has(playerId)),
      moments: locks.moments.filter(({ pitches }) =>
        Object.keys(pitches).every((id) => ids.has(id)),
      ),
    },
  };
}
