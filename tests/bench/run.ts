import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { Found, medianOf, timed, type Bench } from "./bench.ts";

const files = import.meta.glob<{ readonly benches: readonly Bench[] }>("./*.bench.ts");

/** One line of the result. */
interface Timing {
  readonly name: string;
  readonly medianMs: number;
  readonly fastestMs: number;
  readonly slowestMs: number;
  /** Time that this process computed, whatever else ran on the machine. */
  readonly medianCpuMs: number;
  readonly target?: { readonly most: number; readonly unit: string; readonly measured: number };
  readonly remark?: string;
}

/**
 * Times every piece of work in tests/bench, or those whose file or name holds one of the words, and
 * leaves the numbers in .bench/latest.json.
 * @param words - parts of names; none means all but those done on demand only
 * @returns exit code: 0, or 2 when no name holds any of the words
 */
export async function main(words: readonly string[]): Promise<number> {
  const isWanted = (file: string, { name, isOnDemand = false }: Bench) =>
    words.length === 0
      ? !isOnDemand
      : words.some((word) => `${file} ${name}`.toLowerCase().includes(word.toLowerCase()));
  process.stdout.write(
    `Node ${process.versions.node}, ${cpus().length} cores, ${cpus()[0]?.model ?? "unknown"}\n`,
  );
  const timings: Timing[] = [];
  for (const [file, load] of Object.entries(files)) {
    const { benches } = await load();
    for (const bench of benches.filter((each) => isWanted(file, each))) {
      const timing = await timingOf(bench);
      timings.push(timing);
      process.stdout.write(`${lineOf(timing)}\n`);
    }
  }
  if (timings.length === 0) {
    process.stderr.write("No benchmark has such a name.\n");
    return 2;
  }
  process.stdout.write(tableOf(timings));
  mkdirSync(".bench", { recursive: true });
  writeFileSync(".bench/latest.json", `${JSON.stringify(timings, undefined, 2)}\n`);
  return 0;
}

async function timingOf({ name, repeats = 5, target, run }: Bench): Promise<Timing> {
  // The first run warms up, unless one run is all there is.
  if (repeats > 1) await run();
  const runs: Awaited<ReturnType<typeof timed>>[] = [];
  for (let i = 0; i < repeats; i++) runs.push(await timed(run));
  const clocks = runs.map(({ clock }) => clock);
  const medianMs = medianOf(clocks);
  const medianCpuMs = medianOf(runs.map(({ computing }) => computing));
  const values = runs.flatMap(({ found }) => (found instanceof Found ? [found.value] : []));
  const measured = values.length > 0 ? medianOf(values) : Math.min(medianMs, medianCpuMs);
  const last = runs.at(-1)?.found;
  const remark = last instanceof Found ? last.text : last;
  return {
    name,
    medianMs,
    fastestMs: Math.min(...clocks),
    slowestMs: Math.max(...clocks),
    medianCpuMs,
    ...(target ? { target: { ...target, measured } } : {}),
    ...(typeof remark === "string" ? { remark } : {}),
  };
}

const show = (value: number) => value.toFixed(1);

function lineOf({ name, medianMs, fastestMs, slowestMs, medianCpuMs, remark }: Timing): string {
  const spread = `${show(fastestMs)} to ${show(slowestMs)}, computing ${show(medianCpuMs)}`;
  return `${name}: median ${show(medianMs)} ms (${spread})${remark === undefined ? "" : `; ${remark}`}`;
}

/** The work that has something to reach, as a table; nothing when there is none. */
function tableOf(timings: readonly Timing[]): string {
  const rows = timings.flatMap(({ name, target }) =>
    target === undefined
      ? []
      : [
          [
            name,
            `≤ ${target.most} ${target.unit}`,
            `${show(target.measured)} ${target.unit}`,
            target.measured <= target.most ? "reached" : "MISSED",
          ],
        ],
  );
  if (rows.length === 0) return "";
  const all = [["", "wanted", "measured", ""], ...rows];
  const widths = [0, 1, 2].map((i) => Math.max(...all.map((row) => row[i]?.length ?? 0)));
  const lines = all.map((row) => row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join("  "));
  return `\n${lines.map((line) => line.trimEnd()).join("\n")}\n`;
}
