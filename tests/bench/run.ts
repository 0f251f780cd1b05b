import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import type { Bench } from "./bench.ts";

const files = import.meta.glob<{ readonly benches: readonly Bench[] }>("./*.bench.ts");

/** One line of the result. */
interface Timing {
  readonly name: string;
  readonly medianMs: number;
  readonly fastestMs: number;
  readonly slowestMs: number;
  readonly remark?: string;
}

/**
 * Times every piece of work in tests/bench, or those whose file or name holds one of the words, and
 * leaves the numbers in .bench/latest.json.
 * @param words - parts of names; none means all
 * @returns exit code: 0, or 2 when no name holds any of the words
 */
export async function main(words: readonly string[]): Promise<number> {
  const isWanted = (name: string) =>
    words.length === 0 || words.some((word) => name.toLowerCase().includes(word.toLowerCase()));
  process.stdout.write(
    `Node ${process.versions.node}, ${cpus().length} cores, ${cpus()[0]?.model ?? "unknown"}\n`,
  );
  const timings: Timing[] = [];
  for (const [file, load] of Object.entries(files)) {
    const { benches } = await load();
    for (const bench of benches.filter((each) => isWanted(`${file} ${each.name}`))) {
      const timing = await timed(bench);
      timings.push(timing);
      process.stdout.write(`${lineOf(timing)}\n`);
    }
  }
  if (timings.length === 0) {
    process.stderr.write("No benchmark has such a name.\n");
    return 2;
  }
  mkdirSync(".bench", { recursive: true });
  writeFileSync(".bench/latest.json", `${JSON.stringify(timings, undefined, 2)}\n`);
  return 0;
}

async function timed({ name, repeats = 5, run }: Bench): Promise<Timing> {
  // The first run warms up, unless one run is all there is.
  let remark: unknown = repeats > 1 ? await run() : undefined;
  const times: number[] = [];
  for (let i = 0; i < repeats; i++) {
    const start = performance.now();
    remark = await run();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return {
    name,
    medianMs: times[Math.floor((times.length - 1) / 2)] ?? 0,
    fastestMs: times[0] ?? 0,
    slowestMs: times.at(-1) ?? 0,
    ...(typeof remark === "string" ? { remark } : {}),
  };
}

function lineOf({ name, medianMs, fastestMs, slowestMs, remark }: Timing): string {
  const show = (value: number) => value.toFixed(1);
  const spread = `${show(fastestMs)} to ${show(slowestMs)}`;
  return `${name}: median ${show(medianMs)} ms (${spread})${remark === undefined ? "" : `; ${remark}`}`;
}
