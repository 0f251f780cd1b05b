import { soneToPhon5322 } from "../acoustics/index.ts";
import { listenTo } from "./listener.ts";
import type { Metric } from "./metric.ts";
import { numberText } from "./number-text.ts";
import { notDefined } from "./stack-gaps.ts";

/** How loud an average listener would call it. */
export const loudness: Metric = {
  id: "loudness",
  label: "Loudness",
  unit: "sones",
  meaning: "How loud a listener would call it; twice the sones is twice as loud.",
  source: "ISO 532-2:2017 (Moore and Glasberg), stationary, diffuse field",
  better: "neither",
  axis: [0, 160],
  isHeard: true,
  measure: (voicing, { dynamic }) => {
    if (voicing.placements.length === 0) return notDefined("No horn sounds.");
    const sones = listenTo(voicing, dynamic).heard.loudness;
    return {
      value: sones,
      text: numberText(sones, sones < 10 ? 1 : 0),
      detail: `As loud as a 1 kHz tone at ${Math.round(soneToPhon5322(sones))} dB.`,
      notes: [],
      playerIds: [],
    };
  },
};
