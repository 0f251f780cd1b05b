import { barCount, barLength, type Divisions, type Key, type Melody } from "../../theory/index.ts";
import type { ScoreBar, ScoreModel } from "./score-model.ts";

const STYLE_WORDS: Readonly<Record<Melody["style"], string>> = Object.freeze({
  swing: "Swing",
  straight: "Straight",
  ballad: "Ballad",
  latin: "Latin",
});

/**
 * What a score of a melody has beside its notes: title, tempo, style, bars.
 * @param melody - a melody that readMelody has found in order
 * @returns a score's fields
 */
export function melodyFrame(
  melody: Melody,
): Pick<ScoreModel, "title" | "division" | "tempo" | "bars"> & { readonly style: string } {
  const { title, division, tempo, style } = melody;
  return { title, division, tempo, style: STYLE_WORDS[style], bars: barsOf(melody) };
}

function barsOf(melody: Melody): readonly ScoreBar[] {
  const { metre, pickup } = melody;
  const { letter, alteration } = melody.key.tonic;
  const key: Key = { tonic: { letter, alteration }, mode: melody.key.mode };
  const full = barLength(melody);
  const bars = Array.from({ length: barCount(melody) }, (): ScoreBar => ({
    length: full,
    metre,
    key,
  }));
  const upbeat: ScoreBar = { length: pickup as Divisions, metre, key, isPickup: true };
  return pickup > 0 ? [upbeat, ...bars] : bars;
}
