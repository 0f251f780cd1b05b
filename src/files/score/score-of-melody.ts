import { heardNotes, readChord, type Melody } from "../../theory/index.ts";
import { leadSheetScore } from "./lead-sheet.ts";
import { melodyFrame } from "./melody-frame.ts";
import type { ScoreHarmony, ScoreModel } from "./score-model.ts";

/**
 * A lead sheet: the melody on one staff with its chord symbols.
 * @param melody - a melody that readMelody has found in order
 * @returns the score; a chord that cannot be read is left out
 */
export function scoreOfMelody(melody: Melody): ScoreModel {
  return leadSheetScore({
    ...melodyFrame(melody),
    harmonies: melody.changes.flatMap(({ onset, text }): ScoreHarmony[] => {
      const chord = readChord(text);
      return chord.ok ? [{ onset, symbol: chord.value.symbol }] : [];
    }),
    repeats: melody.repeats,
    notes: heardNotes(melody).map(({ onset, duration, pitch }) => ({ onset, duration, pitch })),
  });
}
