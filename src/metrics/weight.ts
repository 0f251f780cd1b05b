import { percentText, numberText } from "./number-text.ts";
import type { Metric } from "./metric.ts";
import { notDefined, spanOf } from "./stack-gaps.ts";
import { weightByThird, type WeightByThird } from "./weight-by-third.ts";

function whereItSits({ low, middle, high, total }: WeightByThird): string {
  const [lower, upper] = [percentText(low / total), percentText(high / total)];
  return `Low third ${lower}, middle ${percentText(middle / total)}, high ${upper}.`;
}

/** Heaviness in balance units: a trumpet or trombone 4, a horn 2, a flute 1 at f; 1 each at p. */
export const weight: Metric = {
  id: "weight",
  label: "Weight",
  unit: "balance units",
  meaning: "How heavy the players are together: a trumpet at f counts 4, any horn at p counts 1.",
  source: "N. Rimsky-Korsakov, Principles of Orchestration (1922); saxes and mutes from memory",
  better: "neither",
  axis: [0, 52],
  isHeard: false,
  measure: (voicing, { dynamic }) => {
    const units = weightByThird(voicing, dynamic);
    if (units.total === 0) return notDefined("No horn sounds.");
    return {
      value: units.total,
      text: numberText(units.total, 1),
      detail: spanOf(voicing) === 0 ? "All on one pitch." : whereItSits(units),
      notes: [],
      playerIds: voicing.placements.map(({ player }) => player.id),
    };
  },
};
