import { quantity, type SoundingMidi } from "../base/index.ts";
import type { Player } from "../band/index.ts";
import type { Harmony } from "./harmony.ts";
import { isLowColour, mayPlay } from "./rules.ts";
import type { Question } from "./voicing-types.ts";

/** Semitones over the lead that harmony may reach when the lead need not be on top. */
const reachAboveLead = 12;

/**
 * Whether a note may sound in a voicing that is no line (rules H2, H7 and H9).
 * @param midi - the note
 * @param question - its rules
 * @param harmony - its tones
 * @returns true for the lead, whatever it is
 */
export function isHarmonyNote(midi: SoundingMidi, question: Question, harmony: Harmony): boolean {
  const { rules, lead } = question;
  if (midi === lead) return true;
  const isTone = !rules.H2 || harmony.ticked.has(harmony.aboveRoot(midi));
  const isLow = rules.H9 && isLowColour(midi, harmony);
  const isUnderLead = rules.H7 && midi === lead - 1;
  return isTone && !isLow && !isUnderLead;
}

/**
 * Every note that anyone may sound: those of the harmony, and the lead's octaves below it, which
 * lines may have whatever the chord.
 * @param question - the question
 * @param harmony - its tones
 * @param players - those who take part
 * @returns highest first
 */
export function candidateNotes(
  question: Question,
  harmony: Harmony,
  players: readonly Player[],
): readonly SoundingMidi[] {
  const { rules, lead } = question;
  const top = Math.min(127, rules.H1 ? lead : lead + reachAboveLead);
  return Array.from({ length: top + 1 }, (_, down) => quantity<SoundingMidi>(top - down)).filter(
    (midi) => {
      const isOctave = midi <= lead && (lead - midi) % 12 === 0;
      const isWanted = isOctave || isHarmonyNote(midi, question, harmony);
      return isWanted && players.some((player) => mayPlay(player, midi, question));
    },
  );
}
