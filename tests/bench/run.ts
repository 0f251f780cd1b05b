import { cpus } from "node:os";
import type { Bench } from "./bench.ts";

const files = import.meta.glob<{ readonly benches: readonly Bench[] }>("./*.bench.ts");

/**
 * Times every piece of work in tests/bench, or those whose file or name holds one of the words.
 * @param words - parts of names; none means all
 * @returns exit code: 0, or 2 when no name holds any of the words
 */
export async function main(words: readonly string[]): Promise<number> {
  const isWanted = (name: string) =>
    words.length === 0 || words.some((word) => name.toLowerCase().includes(word.toLowerCase()));
  process.stdout.write(
    `Node ${process.versions.node}, ${cpus().length} cores, ${cpus()[0]?.model ?? "unknown"}\n`,
  );
  let done = 0;
  for (const [file, load] of Object.entries(files)) {
    const { benches } = await load();
    for (const bench of benches.filter((each) => isWanted(`${file} ${each.name}`))) {
      process.stdout.write(`${await timed(bench)}\n`);
      done += 1;
    }
  }
  if (done > 0) return 0;
  process.stderr.write("No benchmark has such a name.\n");
  return 2;
}

async function timed({ name, repeats = 5, run }: Bench): Promise<string> {
  let remark: unknown = await run();
  const times: number[] = [];
  for (let i = 0; i < repeats; i++) {
    const start = performance.now();
    remark = await run();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  const show = (value: number | undefined) => `${(value ?? 0).toFixed(1)} ms`;
  const median = times[Math.floor((times.length - 1) / 2)];
  const tail = typeof remark === "string" ? `  ${remark}` : "";
  return `${name}: median ${show(median)}, ${show(times[0])} to ${show(times.at(-1))}${tail}`;
}
