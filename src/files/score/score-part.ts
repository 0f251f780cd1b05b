import { instrumentOf, type Player } from "../../band/index.ts";
import type { PartDirection, ScoreNote, ScorePart } from "./score-model.ts";

/**
 * A player's part.
 * @param player - the player; a mute is said in words at the beginning
 * @param notes - what the player sounds
 * @param directions - dynamics and words, in order of onset
 * @returns the part
 */
export function scorePart(
  player: Player,
  notes: readonly ScoreNote[],
  directions: readonly PartDirection[] = [],
): ScorePart {
  const { id, name, abbreviation, instrument, mute } = player;
  const { transposition, clef } = instrumentOf(instrument);
  const words: readonly PartDirection[] =
    mute === "open" ? [] : [{ onset: 0 as PartDirection["onset"], words: `${mute} mute` }];
  return {
    id,
    name,
    abbreviation,
    instrument,
    transposition,
    clef,
    notes,
    directions: [...words, ...directions],
  };
}
