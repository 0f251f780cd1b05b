import { hzToErbNumber } from "../acoustics/index.ts";
import { midiToHz, type SoundingMidi } from "../base/index.ts";
import type { Metric } from "./metric.ts";
import { numberText } from "./number-text.ts";
import { gapsOf, needsTwoNotes, notDefined } from "./stack-gaps.ts";

const place = (pitch: SoundingMidi): number => hzToErbNumber(midiToHz(pitch));

/** How far neighbouring notes are from lying equally far apart for the ear. */
export const criticalBandSpacing: Metric = {
  id: "critical-band-spacing",
  label: "Unevenness to the ear",
  unit: "Cam",
  meaning:
    "How far the gaps are from equal critical bands, which in pitch are wide low and narrow high.",
  source:
    "definition of this project, after D. Huron and P. Sellmer, Music Perception 10 (1992): " +
    "composers space chords nearer to equal critical bands",
  better: "neither",
  axis: [0, 4],
  isHeard: false,
  measure: (voicing) => {
    const steps = gapsOf(voicing).map(({ lower, upper }) => place(upper) - place(lower));
    if (steps.length === 0) return notDefined(needsTwoNotes);
    const mean = steps.reduce((sum, step) => sum + step, 0) / steps.length;
    const squares = steps.reduce((sum, step) => sum + (step - mean) ** 2, 0);
    const value = Math.sqrt(squares / steps.length);
    return {
      value,
      text: numberText(value, 2),
      detail: `Mean step ${numberText(mean, 1)} Cam; 0 would be all steps alike.`,
      notes: [],
      playerIds: [],
    };
  },
};
