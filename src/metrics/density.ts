import type { Metric } from "./metric.ts";
import { stackOf } from "../voicing/index.ts";
import { countText, numberText } from "./number-text.ts";
import { needsTwoNotes, notDefined, spanOf } from "./stack-gaps.ts";

/** Distinct notes for each octave of span. */
export const density: Metric = {
  id: "density",
  label: "Density",
  unit: "notes per octave",
  meaning: "How closely the different notes lie: 12 × (notes − 1) / span.",
  source: "definition of this project",
  better: "neither",
  axis: [0, 6],
  isHeard: false,
  measure: (voicing) => {
    const notes = stackOf(voicing).length;
    const reach = spanOf(voicing);
    if (reach === 0) return notDefined(needsTwoNotes);
    const value = (12 * (notes - 1)) / reach;
    return {
      value,
      text: numberText(value, 2),
      detail: `${countText(notes, "note")} over ${countText(reach, "semitone")}.`,
      notes: [],
      playerIds: [],
    };
  },
};
