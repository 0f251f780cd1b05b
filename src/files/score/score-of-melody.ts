import { quantity } from "../../base/index.ts";
import type { Transposition } from "../../band/index.ts";
import {
  barCount,
  barLength,
  heardNotes,
  readChord,
  type Divisions,
  type Melody,
} from "../../theory/index.ts";
import type { ScoreBar, ScoreHarmony, ScoreModel } from "./score-model.ts";

/** Concert pitch. */
const CONCERT_PITCH: Transposition = Object.freeze({
  diatonic: 0,
  chromatic: quantity<Transposition["chromatic"]>(0),
  octaveChange: 0,
});
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
  return {
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
    parts: [
      {
        id: "melody",
        name: "Melody",
        abbreviation: "",
        instrument: null,
        transposition: CONCERT_PITCH,
        clef: "treble",
        notes: heardNotes(melody).map(({ onset, duration, pitch }) => ({ onset, duration, pitch })),
        directions: [],
      },
    ],
  };
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
