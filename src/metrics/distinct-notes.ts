import { pitchClass } from "../base/index.ts";
import { stackOf } from "../voicing/index.ts";
import type { Metric } from "./metric.ts";
import { countText } from "./number-text.ts";

/** How many different pitches sound. */
export const distinctNotes: Metric = {
  id: "notes",
  label: "Notes",
  unit: "different pitches",
  meaning: "How many different pitches sound, doublings not counted.",
  source: "definition of this project",
  better: "neither",
  axis: [1, 13],
  isHeard: false,
  measure: (voicing) => {
    const stack = stackOf(voicing);
    const names = new Set(stack.map((pitch) => pitchClass(pitch))).size;
    return {
      value: stack.length,
      text: String(stack.length),
      detail: `${countText(names, "note name")}, octaves not counted.`,
      notes: [],
      playerIds: [],
    };
  },
};
