import type { SoundingMidi } from "../base/index.ts";
import { harmonyOf } from "./harmony.ts";
import { playerTerms } from "./player-terms.ts";
import { sharingTerms } from "./sharing-terms.ts";
import { stackTerms } from "./stack-terms.ts";
import { stackOf } from "./stack.ts";
import type { Cost, Question, Voicing } from "./voicing-types.ts";

/**
 * Whether a voicing is a line: unison, or octaves with the lead on top.
 * @param voicing - who sounds what
 * @param lead - the melody note
 * @returns true when every pitch is the lead or octaves below it; true when nobody sounds
 */
export function isLine(voicing: Voicing, lead: SoundingMidi): boolean {
  return voicing.placements.every(
    ({ sounding }) => sounding <= lead && (lead - sounding) % 12 === 0,
  );
}

/**
 * What a voicing costs, term by term and in words. Works for anything, hand-made voicings
 * included; the total can be compared with voicings of the same cell only.
 * @param voicing - who sounds what
 * @param question - chord, lead, dynamic and settings
 * @returns the terms that are not 0, and their sum
 */
export function costOf(voicing: Voicing, question: Question): Cost {
  const heard = withoutOctaveAbove(voicing, question);
  const harmony = harmonyOf(question);
  const stack = stackOf(heard);
  const terms = isLine(heard, question.lead)
    ? heard.placements.flatMap((each) => playerTerms(each, question, false))
    : [
        ...stackTerms(stack, harmony, question),
        ...heard.placements.flatMap((each) => playerTerms(each, question, question.homes)),
        ...sharingTerms(heard, stack, harmony),
      ];
  const counted = terms.filter((term) => term.value !== 0);
  return { total: counted.reduce((sum, term) => sum + term.value, 0), terms: counted };
}

/**
 * The part of a voicing that is judged: a player an octave above the lead stands beside it.
 * @param voicing - who sounds what
 * @param question - says who that is
 * @returns the voicing without that player, if the player is there
 */
export function withoutOctaveAbove(voicing: Voicing, question: Question): Voicing {
  if (question.octaveAbovePlayer === undefined) return voicing;
  return {
    placements: voicing.placements.filter(
      ({ player, sounding }) =>
        player.id !== question.octaveAbovePlayer || sounding !== question.lead + 12,
    ),
  };
}
