import type { SearchOptions } from "../../src/voicing/index.ts";
import {
  drawnQuestions,
  firstCells,
  harmonyCells,
  layerOnDemand,
  medianOver,
  memoryOf,
  questionOf,
  searched,
  withPlayers,
  withTones,
} from "./atlas-bench.ts";
import type { Bench } from "./bench.ts";

const usual = questionOf({});
const altered = questionOf({ chordText: "C7alt", melodyText: "Bb5", colour: "altered" });
const ms = (most: number) => ({ most, unit: "ms" }) as const;

const layers: readonly (readonly [name: string, options: SearchOptions])[] = [
  ["by section", { layer: "by-section" }],
  ["crossed", { layer: "crossed" }],
  ["trumpets and saxes", { sections: ["trumpets", "saxes"] }],
  ["all sections, crossed", { sections: ["trumpets", "trombones", "saxes"], layer: "crossed" }],
];

const from = (first: number, last: number): readonly number[] =>
  Array.from({ length: last - first + 1 }, (_, i) => first + i);

/** How long the search takes: what the project wants of it, and how it grows. */
export const benches: readonly Bench[] = [
  {
    name: "atlas: F13 under D5, thirteen players",
    repeats: 15,
    target: ms(50),
    run: () => searched(usual),
  },
  {
    name: "atlas: C7alt under B♭5, whole range",
    repeats: 5,
    target: ms(1000),
    run: () => searched(altered),
  },
  {
    name: "atlas: C7alt under B♭5, up to nine notes",
    repeats: 5,
    target: ms(500),
    run: () => searched(altered, { mostNotes: 9 }),
  },
  ...layers.map(([name, options]) => ({
    name: `atlas: one more layer of one cell, ${name}`,
    repeats: 1,
    target: ms(30),
    run: () => layerOnDemand(usual, harmonyCells(usual), options),
  })),
  {
    name: "atlas: two hundred drawn questions, the middle one",
    repeats: 1,
    target: ms(60),
    run: () => medianOver(drawnQuestions()),
  },
  {
    name: "atlas: first cells of F13 under D5",
    repeats: 15,
    target: ms(16),
    run: () => firstCells(usual),
  },
  {
    name: "atlas: memory, F13 under D5",
    repeats: 1,
    target: { most: 30, unit: "MB" },
    run: () => memoryOf(usual),
  },
  {
    name: "atlas: memory, C7alt under B♭5",
    repeats: 1,
    target: { most: 30, unit: "MB" },
    run: () => memoryOf(altered),
  },
  ...from(3, 17).map((players) => ({
    name: `atlas: F13 under D5, ${players} players`,
    repeats: 3,
    run: () => searched(withPlayers(players)),
  })),
  ...from(3, 10).map((tones) => ({
    name: `atlas: F13 under D5, ${tones} tones ticked`,
    repeats: tones < 9 ? 3 : 1,
    run: () => searched(withTones(tones)),
  })),
];
