import type { Metric } from "./metric.ts";
import { stackOf } from "../voicing/index.ts";
import { intervalText, numberText } from "./number-text.ts";
import { notDefined, pitchText, spanOf } from "./stack-gaps.ts";

/** Highest minus lowest sounding pitch. */
export const span: Metric = {
  id: "span",
  label: "Span",
  unit: "semitones",
  meaning: "How far the voicing reaches from its lowest to its highest note; an octave is 12.",
  source: "W. Berry, Structural Functions in Music (1976), texture-space; counted exclusively",
  better: "neither",
  axis: [0, 48],
  isHeard: false,
  measure: (voicing, { chord }) => {
    const stack = stackOf(voicing);
    const low = stack[0];
    const high = stack.at(-1);
    if (low === undefined || high === undefined) return notDefined("Nobody sounds.");
    const value = spanOf(voicing);
    return {
      value,
      text: numberText(value, 0),
      detail: `${intervalText(value)}, ${pitchText(low, chord)} to ${pitchText(high, chord)}.`,
      notes: [...new Set([low, high])],
      playerIds: [],
    };
  },
};
