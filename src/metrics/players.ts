import type { SectionId } from "../band/index.ts";
import type { Voicing } from "../voicing/index.ts";
import type { Metric } from "./metric.ts";
import { countText } from "./number-text.ts";

const words: readonly (readonly [SectionId, singular: string, plural: string])[] = [
  ["trumpets", "trumpet", "trumpets"],
  ["trombones", "trombone", "trombones"],
  ["saxes", "sax", "saxes"],
  ["rhythm", "rhythm player", "rhythm players"],
];

/** "4 trumpets, 3 saxes". */
function bySection(voicing: Voicing): string {
  const parts = words.flatMap(([section, singular, plural]) => {
    const count = voicing.placements.filter(({ player }) => player.section === section).length;
    return count === 0 ? [] : [countText(count, singular, plural)];
  });
  return parts.length === 0 ? "Nobody sounds." : `${parts.join(", ")}.`;
}

/** How many players sound: Berry's density-number. */
export const players: Metric = {
  id: "players",
  label: "Players",
  unit: "players",
  meaning: "How many players sound at once.",
  source: "W. Berry, Structural Functions in Music (1976), density-number",
  better: "neither",
  axis: [0, 13],
  isHeard: false,
  measure: (voicing) => ({
    value: voicing.placements.length,
    text: String(voicing.placements.length),
    detail: bySection(voicing),
    notes: [],
    playerIds: voicing.placements.map(({ player }) => player.id),
  }),
};
