import { listenTo } from "./listener.ts";
import type { Metric } from "./metric.ts";
import { notDefined } from "./stack-gaps.ts";

/** Beating between the players' partials, over the whole voicing. */
export const roughness: Metric = {
  id: "roughness",
  label: "Roughness",
  unit: "share",
  meaning: "How much the partials of different notes beat against one another, bite included.",
  source: "W. Hutchinson and L. Knopoff 1978, form of E. Bigand and others 1996",
  better: "neither",
  axis: [0, 4],
  isHeard: true,
  measure: (voicing, { dynamic }) => {
    if (voicing.placements.length === 0) return notDefined("No horn sounds.");
    const value = listenTo(voicing, dynamic).heard.roughness;
    return {
      value,
      text: value.toFixed(2),
      detail: "0 is quite smooth.",
      notes: [],
      playerIds: [],
    };
  },
};
