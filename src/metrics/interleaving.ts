import { interleavingOf, type Voicing } from "../voicing/index.ts";
import type { Metric } from "./metric.ts";

import { notDefined } from "./stack-gaps.ts";

function whyNone(voicing: Voicing): string {
  const sections = new Set(voicing.placements.map(({ player }) => player.section)).size;
  if (sections < 2) return "It takes two sections to interlock.";
  return "No section of two notes or more leaves a note to another.";
}

/** How far the sections interlock in pitch. */
export const interleaving: Metric = {
  id: "interleaving",
  label: "Interleaving",
  unit: "share of 1",
  meaning: "How far the sections interlock: 0 when each is an unbroken run of the voicing's notes.",
  source: "definition of this project",
  better: "neither",
  axis: [0, 1],
  isHeard: false,
  measure: (voicing) => {
    const { skipped, left, value } = interleavingOf(voicing);
    if (value === null) return notDefined(whyNone(voicing));
    return {
      value,
      text: value.toFixed(2),
      detail: `${skipped} of ${left} notes that sections leave to others lie inside them.`,
      notes: [],
      playerIds: [],
    };
  },
};
