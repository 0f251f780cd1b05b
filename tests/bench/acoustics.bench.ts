import { acousticsBench } from "./acoustics-bench.ts";
import type { Bench } from "./bench.ts";

/** How fast the ear is, and how near the full method. Wanted: 20,000 a second, within 1 %. */
export const benches: readonly Bench[] = [
  {
    name: "ear: a thousand thirteen-player voicings, all heard measures",
    repeats: 1,
    run: () => {
      const found = acousticsBench(() => performance.now());
      const percent = (value: number) => `${(100 * value).toFixed(2)} %`;
      return (
        `${Math.round(found.voicingsPerSecond)} voicings a second ` +
        `(median ${found.medianMicroseconds.toFixed(1)} µs, best ${found.bestMicroseconds.toFixed(1)} µs, ` +
        `first time ${found.firstMicroseconds.toFixed(0)} µs; ${found.prepareMs.toFixed(2)} ms a new note); ` +
        `loudness off by ${percent(found.worstLoudnessError)} at worst, ` +
        `${percent(found.meanLoudnessError)} on average over ${found.compared}`
      );
    },
  },
];
