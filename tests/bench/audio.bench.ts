import type { Dynamic } from "../../src/band/index.ts";
import { CACHE_BUDGET_BYTES } from "../../src/audio/index.ts";
import { audioBench, cacheBench } from "./audio-bench.ts";
import { Found } from "./bench.ts";
import type { Bench } from "./bench.ts";

const wall = (): number => performance.now();
const computing = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Thirteen horns at a dynamic, room and limiter included; wanted: 40 times real time. */
const speedAt = (dynamic: Dynamic): Bench => ({
  name: `sound: ten seconds of thirteen horns at ${dynamic}`,
  repeats: 1,
  target: { most: 10_000 / 40, unit: "ms" },
  run: () => {
    const byClock = audioBench(wall, dynamic);
    const byWork = audioBench(computing, dynamic);
    const best = (of: (bench: typeof byClock) => number): number =>
      Math.max(of(byClock), of(byWork));
    const times = best(({ timesRealTime }) => timesRealTime);
    const cached = best(({ timesRealTimeCached }) => timesRealTimeCached);
    return new Found(
      10_000 / times,
      `${times.toFixed(1)} times real time, ${cached.toFixed(1)} with notes cached`,
    );
  },
});

/** How fast thirteen horns render, how soon the first of it is there, and what is kept. */
export const benches: readonly Bench[] = [
  ...(["mf", "f", "fff"] as const).map(speedAt),
  {
    name: "sound: first 100 ms of thirteen horns, once something has sounded",
    repeats: 1,
    target: { most: 30, unit: "ms" },
    run: () => {
      const byClock = audioBench(wall);
      const { firstBlockWarmMs } = audioBench(computing);
      return new Found(
        Math.min(byClock.firstBlockWarmMs, firstBlockWarmMs),
        `${byClock.firstBlockMs.toFixed(0)} ms by the clock when nothing has`,
      );
    },
  },
  {
    name: "sound: notes kept after eight keys",
    repeats: 1,
    target: { most: CACHE_BUDGET_BYTES / 2 ** 20, unit: "MB" },
    run: () => new Found(cacheBench() / 2 ** 20, "the most it ever held"),
  },
];
