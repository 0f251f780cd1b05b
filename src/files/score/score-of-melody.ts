import {
  barCount,
  barLength,
  heardNotes,
  readChord,
  type Divisions,
  type Melody,
} from "../../theory/index.ts";
import { leadSheetScore } from "./lead-sheet.ts";
import type { ScoreBar, ScoreHarmony, ScoreModel } from "./score-model.ts";

const STYLE_WORDS: Readonly<Record<Melody["style"], string>> = Object.freeze({
  swing: "Swing",
  straight: "Straight",
  ballad: "Ballad",
  latin: "Latin",
});

/**
 * A lead sheet: the melody on one staff with its chord symbols.
 * @param melody - a melody that readMelody has found in order
 * @returns the score; a chord that cannot be read is left out
 */
export function scoreOfMelody(melody: Melody): ScoreModel {
  const { title, division, tempo, style, repeats } = melody;
  return leadSheetScore({
    title,
    division,
    tempo,
    style: STYLE_WORDS[style],
    bars: barsOf(melody),
    harmonies: melody.changes.flatMap(({ onset, text }): ScoreHarmony[] => {
      const chord = readChord(text);
      return chord.ok ? [{ onset, symbol: chord.value.symbol }] : [];
    }),
    repeats,
    notes: heardNotes(melody).map(({ onset, duration, pitch }) => ({ onset, duration, pitch })),
  });
}

function barsOf(melody: Melody): readonly ScoreBar[] {
  const { metre, key, pickup } = melody;
  const full = barLength(melody);
  const bars = Array.from({ length: barCount(melody) }, (): ScoreBar => ({
    length: full,
    metre,
    key,
  }));
  const upbeat: ScoreBar = { length: pickup as Divisions, metre, key, isPickup: true };
  return pickup > 0 ? [upbeat, ...bars] : bars;
}
