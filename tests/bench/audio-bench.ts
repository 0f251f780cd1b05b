import { soundingMidi } from "../../src/base/index.ts";
import type { Count, Hertz, Seconds } from "../../src/base/index.ts";
import { lineUpById } from "../../src/band/index.ts";
import type { Dynamic } from "../../src/band/index.ts";
import {
  NoteMaker,
  bandTimbre,
  planVoicing,
  renderBlocks,
  renderPlan,
} from "../../src/audio/index.ts";
import type { Timbre } from "../../src/audio/index.ts";
import type { Voicing } from "../../src/voicing/index.ts";

/** What the bench found. */
export interface AudioBench {
  /** Seconds of sound per second of computing, nothing cached; best of the runs. */
  readonly timesRealTime: number;
  /** The same when every note is in the cache. */
  readonly timesRealTimeCached: number;
  /** Milliseconds until the first 100 ms block of a fresh maker. */
  readonly firstBlockMs: number;
  /** The same when the maker has sounded something before, as after the page has loaded. */
  readonly firstBlockWarmMs: number;
}

/** Sounding pitches of the thirteen horns of the bench: a wide F13. */
const PITCHES = [74, 69, 67, 63, 69, 63, 57, 41, 67, 63, 62, 57, 50];
const CLOCK_RUNS = 5;

/**
 * The voicing that is rendered: thirteen horns, every one with attack, scatter and vibrato.
 * @param shift - semitones by which the whole is moved
 * @returns thirteen placements
 */
function benchVoicing(shift: Count = 0): Voicing {
  const band = lineUpById("big-band");
  if (!band.ok) throw new Error(band.problem.message);
  return {
    placements: band.value.players.map((player, i) => ({
      player,
      sounding: soundingMidi(PITCHES[i]! + shift),
    })),
  };
}

/**
 * Measures how fast thirteen players with attack, scatter, vibrato, room and limiter render. Runs
 * alike in Node and in a page.
 * @param now - a clock in milliseconds
 * @param dynamic - how loud, mf unless given
 * @param timbre - where partials and articulation come from, the band unless given
 * @returns speeds and the wait for the first block
 */
export function audioBench(
  now: () => number,
  dynamic: Dynamic = "mf",
  timbre: Timbre = bandTimbre,
): AudioBench {
  const rate = 48000 as Hertz;
  const seconds = 10 as Seconds;
  const planAt = (shift: Count) =>
    planVoicing(benchVoicing(shift), { dynamic, manner: "sustained", seconds });
  let firstBlockMs = 0;
  let best = 0;
  let bestCached = 0;
  let warm = Infinity;
  for (let run = 0; run < CLOCK_RUNS; run++) {
    const maker = new NoteMaker({ timbre });
    const start = now();
    renderBlocks(planAt(0), { maker }).next();
    if (run === 0) firstBlockMs = now() - start;
    const other = now();
    renderBlocks(planAt(1), { maker }).next();
    warm = Math.min(warm, now() - other);
    const plan = planAt(0);
    const fresh = new NoteMaker({ timbre });
    const began = now();
    const sound = renderPlan(plan, { maker: fresh });
    const middle = now();
    renderPlan(plan, { maker: fresh });
    const length = sound.left.length / rate;
    best = Math.max(best, (1000 * length) / (middle - began));
    bestCached = Math.max(bestCached, (1000 * length) / (now() - middle));
  }
  return {
    timesRealTime: best,
    timesRealTimeCached: bestCached,
    firstBlockMs,
    firstBlockWarmMs: warm,
  };
}

/**
 * Fills the note cache beyond its budget: ten seconds of thirteen horns in eight keys.
 * @returns the most bytes it ever held
 */
export function cacheBench(): number {
  const maker = new NoteMaker();
  let most = 0;
  for (let shift = 0; shift < 8; shift++) {
    const how = { dynamic: "mf", manner: "sustained", seconds: 10 as Seconds } as const;
    renderPlan(planVoicing(benchVoicing(shift - 4), how), { maker });
    most = Math.max(most, maker.cache.bytes);
  }
  return most;
}
