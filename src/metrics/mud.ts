import { mudBetween, mudVerdict } from "../acoustics/index.ts";
import { midiToHz } from "../base/index.ts";
import type { Metric } from "./metric.ts";
import { gapsOf, pitchText, needsTwoNotes, notDefined } from "./stack-gaps.ts";

/** The muddiest pair of neighbouring notes. */
export const mud: Metric = {
  id: "mud",
  label: "Mud",
  unit: "worst pair",
  meaning: "How much the worst pair of neighbouring notes blurs; muddy from 0.87 up.",
  source:
    "roughness of W. Sethares 1993 between stock notes; thresholds: definition of this project",
  better: "lower",
  axis: [0, 1.5],
  isHeard: true,
  measure: (voicing, { chord }) => {
    const pairs = gapsOf(voicing).map(({ lower, upper }) => ({
      lower,
      upper,
      value: mudBetween(midiToHz(lower), midiToHz(upper)),
    }));
    const [first, ...others] = pairs;
    if (!first) return notDefined(needsTwoNotes);
    const worst = others.reduce((most, pair) => (pair.value > most.value ? pair : most), first);
    const { lower, upper, value } = worst;
    return {
      value,
      text: value.toFixed(2),
      detail: `${pitchText(lower, chord)} with ${pitchText(upper, chord)}: ${mudVerdict(value)}.`,
      notes: [lower, upper],
      playerIds: voicing.placements
        .filter(({ sounding }) => sounding === lower || sounding === upper)
        .map(({ player }) => player.id),
    };
  },
};
