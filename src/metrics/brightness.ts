import { listenTo } from "./listener.ts";
import type { Metric } from "./metric.ts";
import { notDefined } from "./stack-gaps.ts";

/** Where the middle of the spectrum lies. */
export const brightness: Metric = {
  id: "brightness",
  label: "Brightness",
  unit: "Hz",
  meaning: "Where the middle of the spectrum lies; higher is brighter.",
  source: "spectral centroid by sound pressure; common practice, no single source",
  better: "neither",
  axis: [500, 2500],
  isHeard: true,
  measure: (voicing, { dynamic }) => {
    if (voicing.placements.length === 0) return notDefined("No horn sounds.");
    const hz = listenTo(voicing, dynamic).heard.centroidByAmplitude;
    return {
      value: hz,
      text: String(Math.round(hz / 10) * 10),
      detail: "Middle of all partials together.",
      notes: [],
      playerIds: [],
    };
  },
};
