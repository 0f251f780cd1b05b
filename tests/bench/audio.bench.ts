import { audioBench } from "./audio-bench.ts";
import type { Bench } from "./bench.ts";

/** How fast thirteen horns render, room and limiter included. */
export const benches: readonly Bench[] = [
  {
    name: "sound: thirteen horns, ten seconds",
    repeats: 1,
    run: () => {
      const found = audioBench(() => performance.now());
      return (
        `${found.timesRealTime.toFixed(1)} times real time, ` +
        `${found.timesRealTimeCached.toFixed(1)} with notes cached, ` +
        `first block ${found.firstBlockMs.toFixed(0)} ms, warm ${found.firstBlockWarmMs.toFixed(0)} ms`
      );
    },
  },
];
