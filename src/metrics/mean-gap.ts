import type { Metric } from "./metric.ts";
import { countText, numberText } from "./number-text.ts";
import { gapsOf, needsTwoNotes, notDefined, spanOf } from "./stack-gaps.ts";

/** Span shared out over the gaps. */
export const meanGap: Metric = {
  id: "mean-gap",
  label: "Mean gap",
  unit: "semitones",
  meaning: "The average distance between neighbouring notes.",
  source: "definition of this project: span / (notes − 1)",
  better: "neither",
  axis: [0, 17],
  isHeard: false,
  measure: (voicing) => {
    const gaps = gapsOf(voicing);
    if (gaps.length === 0) return notDefined(needsTwoNotes);
    const value = spanOf(voicing) / gaps.length;
    return {
      value,
      text: numberText(value, 2),
      detail: `${countText(gaps.length, "gap")} over ${countText(spanOf(voicing), "semitone")}.`,
      notes: [],
      playerIds: [],
    };
  },
};
