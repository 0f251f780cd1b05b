import type { Metric } from "./metric.ts";
import { intervalText, numberText } from "./number-text.ts";
import { gapsOf, needsTwoNotes, notDefined, pitchText, type Gap } from "./stack-gaps.ts";

const wider = (a: Gap, b: Gap): Gap => (b.semitones > a.semitones ? b : a);

/** Largest distance between neighbouring notes; the lowest one when several are as wide. */
export const widestGap: Metric = {
  id: "widest-gap",
  label: "Widest gap",
  unit: "semitones",
  meaning: "The largest distance between two neighbouring notes: a hole, or room for a soloist.",
  source: "definition of this project",
  better: "neither",
  axis: [0, 24],
  isHeard: false,
  measure: (voicing, { chord }) => {
    const gaps = gapsOf(voicing);
    if (gaps.length === 0) return notDefined(needsTwoNotes);
    const { lower, upper, semitones } = gaps.reduce(wider);
    const names = `${pitchText(lower, chord)} to ${pitchText(upper, chord)}`;
    return {
      value: semitones,
      text: numberText(semitones, 0),
      detail: `${intervalText(semitones)}, ${names}.`,
      notes: [lower, upper],
      playerIds: [],
    };
  },
};
