import { quantity } from "../../base/index.ts";
import type { Transposition } from "../../band/index.ts";
import type { ScoreModel, ScoreNote } from "./score-model.ts";

/** Concert pitch. */
const CONCERT_PITCH: Transposition = Object.freeze({
  diatonic: 0,
  chromatic: quantity<Transposition["chromatic"]>(0),
  octaveChange: 0,
});

/** A score of one line. */
export type LeadSheet = Omit<ScoreModel, "parts"> & { readonly notes: readonly ScoreNote[] };

/**
 * A score of one staff at concert pitch.
 * @param sheet - the score's frame, its chords and the notes of its one line
 * @returns the score
 */
export function leadSheetScore({ notes, ...score }: LeadSheet): ScoreModel {
  return {
    ...score,
    parts: [
      {
        id: "melody",
        name: "Melody",
        abbreviation: "",
        instrument: null,
        transposition: CONCERT_PITCH,
        clef: "treble",
        notes,
        directions: [],
      },
    ],
  };
}
