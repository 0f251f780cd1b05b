import { quantity, type SoundingMidi } from "../base/index.ts";
import { harmonyOf } from "./harmony.ts";
import type { AtlasCell, Placement, Question, Voicing } from "./voicing-types.ts";

/**
 * The voicing of a cell with its players.
 * @param question - the question the cell answers
 * @param cell - the cell
 * @returns who sounds what, in the question's order of players
 */
export function voicingOf(question: Question, cell: AtlasCell): Voicing {
  const placements: Placement[] = [];
  question.players.forEach((player, index) => {
    const pitch = cell.pitches[index] ?? 0;
    if (pitch > 0) placements.push({ player, sounding: quantity<SoundingMidi>(pitch) });
  });
  return { placements };
}

/**
 * What was decided about the question on the way, for the page.
 * @param question - the question
 * @returns sentences about clashes between melody and chord; empty when there is none
 */
export function remarksOn(question: Question): readonly string[] {
  return harmonyOf(question).remarks;
}
