import { stackOf } from "../voicing/index.ts";
import type { Metric } from "./metric.ts";
import { numberText } from "./number-text.ts";
import { needsTwoNotes, notDefined, spanOf } from "./stack-gaps.ts";
import { weightByThird } from "./weight-by-third.ts";

/** Share of the weight in the lower third of the span. */
export const lowWeight: Metric = {
  id: "low-weight",
  label: "Weight below",
  unit: "% of balance units",
  meaning: "How much of the weight lies in the lower third of the span.",
  source: "definition of this project, on the balance units of Rimsky-Korsakov",
  better: "neither",
  axis: [0, 100],
  isHeard: false,
  measure: (voicing, { dynamic }) => {
    const { low, total } = weightByThird(voicing, dynamic);
    const span = spanOf(voicing);
    if (total === 0 || span === 0) return notDefined(needsTwoNotes);
    const bottom = stackOf(voicing)[0] ?? 0;
    const below = voicing.placements.filter(({ sounding }) => 3 * (sounding - bottom) < span);
    return {
      value: (100 * low) / total,
      text: numberText(Math.round((100 * low) / total), 0),
      detail: `${numberText(low, 1)} of ${numberText(total, 1)} units.`,
      notes: [...new Set(below.map(({ sounding }) => sounding))].sort((a, b) => a - b),
      playerIds: below.map(({ player }) => player.id),
    };
  },
};
