import { quantity, type SoundingMidi } from "../base/index.ts";
import type { Player } from "../band/index.ts";
import { spellPitch, type Divisions, type SpelledPitch } from "../theory/index.ts";
import type { ArticulationMark } from "./articulation-rule-table.ts";
import type { Articulated } from "./articulate.ts";
import type { Phrase, PhraseAnswer, VoicedMoment } from "./phrase-types.ts";

/** A note of one player's part, as it is heard. */
export interface PartNote {
  readonly onset: Divisions;
  readonly duration: Divisions;
  readonly sounding: SoundingMidi;
  /** Spelled for the chord it begins in. */
  readonly pitch: SpelledPitch;
  readonly marks: readonly ArticulationMark[];
  /** The melody note it goes with. */
  readonly noteId: string;
  /** The moment it begins in. */
  readonly momentId: string;
}

/** What one player plays; what lies between notes is a rest. */
export interface PlayerPart {
  readonly player: Player;
  readonly notes: readonly PartNote[];
}

/**
 * The answer as parts: one line of notes for each player. Where only the chord changes under a held
 * melody note, a player whose pitch stays holds on.
 * @param phrase - players and harmony
 * @param answer - the voicings
 * @param articulated - marks of each melody note
 * @returns parts in the order of the line-up, silent players with no notes
 */
export function partsOf(
  phrase: Phrase,
  answer: PhraseAnswer,
  articulated: readonly Articulated[],
): readonly PlayerPart[] {
  const marksOf = new Map(articulated.map(({ noteId, marks }) => [noteId, marks]));
  const leadSpelling = new Map(phrase.harmonised.map(({ note }) => [note.id, note.pitch]));
  return phrase.players.map((player, index) => ({
    player,
    notes: notesOf(answer.moments, index, (moment) => ({
      pitch: spelled(moment, index, leadSpelling.get(moment.moment.noteId)),
      marks: marksOf.get(moment.moment.noteId) ?? [],
    })),
  }));
}

function notesOf(
  moments: readonly VoicedMoment[],
  player: number,
  look: (moment: VoicedMoment) => Pick<PartNote, "pitch" | "marks">,
): readonly PartNote[] {
  const notes: PartNote[] = [];
  moments.forEach((voiced, index) => {
    const { moment, pitches } = voiced;
    const sounding = pitches[player] ?? 0;
    const last = notes.at(-1);
    const isSame = (moments[index - 1]?.pitches[player] ?? 0) === sounding;
    if (sounding === 0) return;
    if (moment.isHeld && isSame && last) {
      const duration = quantity<Divisions>(moment.onset + moment.duration - last.onset);
      notes[notes.length - 1] = { ...last, duration };
      return;
    }
    notes.push({
      onset: moment.onset,
      duration: moment.duration,
      sounding: quantity<SoundingMidi>(sounding),
      ...look(voiced),
      noteId: moment.noteId,
      momentId: moment.id,
    });
  });
  return notes;
}

/** The melody keeps its own spelling, in any octave; nobody else reads a double accidental. */
function spelled(
  { moment, pitches }: VoicedMoment,
  player: number,
  lead: SpelledPitch | undefined,
): SpelledPitch {
  const sounding = quantity<SoundingMidi>(pitches[player] ?? 0);
  const below = moment.lead - sounding;
  if (lead && below % 12 === 0) return { ...lead, octave: lead.octave - below / 12 };
  const inChord = spellPitch(sounding, moment.chord);
  return Math.abs(inChord.alteration) > 1 ? spellPitch(sounding) : inChord;
}
