import type { Metric } from "./metric.ts";
import { countText, numberText } from "./number-text.ts";
import { needsTwoNotes, notDefined, spanOf } from "./stack-gaps.ts";

/** Sounding players for each semitone of span. */
export const densityCompression: Metric = {
  id: "density-compression",
  label: "Density-compression",
  unit: "players per semitone",
  meaning: "How many players share each semitone of the span, wherever they lie inside it.",
  source: "W. Berry, Structural Functions in Music (1976), value from memory; span exclusive",
  better: "neither",
  axis: [0, 1.5],
  isHeard: false,
  measure: (voicing) => {
    const reach = spanOf(voicing);
    const players = voicing.placements.length;
    if (reach === 0) return notDefined(needsTwoNotes);
    const value = players / reach;
    return {
      value,
      text: numberText(value, 3),
      detail: `${countText(players, "player")} over ${countText(reach, "semitone")}.`,
      notes: [],
      playerIds: [],
    };
  },
};
