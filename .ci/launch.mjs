#!/usr/bin/env node
// The one way in: start, test, check, build, bench, samples, cli. Needs Node only; it installs what
// is missing, once, and says in plain words what it cannot do. It is called directly by the npm
// scripts because pre-hooks are skipped where scripts are switched off.
import { resolve, dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { nodeProblem } from "./node-version.mjs";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "..");

const usage = `Usage: node .ci/launch.mjs <command>
  start [--port N]   build the page if needed, serve it and print its address
  test [files]       run every test, or those in the files named
  check              types, import direction, lint, unused code, format, documents, build
  build              build the page into dist/
  bench              run the benchmarks
  samples            render the recordings in samples-audio/ again
  cli ...            the command line tool; "cli --help" lists its commands`;

/** Each command in a file of its own, loaded only when asked for: the command line starts fast. */
const commands = {
  start: async (args) => (await import("./start.mjs")).start(root, args),
  test: async (args) => (await import("./test.mjs")).test(root, args),
  check: async (args) => (await import("./check.mjs")).check(root, args),
  build: async () => (await import("./build-page.mjs")).buildCommand(root),
  bench: async (args) => (await import("./bundle.mjs")).runBundled(root, "bench", args),
  samples: async (args) => (await import("./bundle.mjs")).runBundled(root, "samples", args),
  cli: async (args) => (await import("./bundle.mjs")).runBundled(root, "cli", args),
};

async function main([name, ...args]) {
  const problem = nodeProblem(process.versions.node);
  if (problem !== undefined) {
    process.stderr.write(`${problem}\n`);
    return 2;
  }
  if (!Object.hasOwn(commands, name ?? "")) {
    process.stderr.write(`${usage}\n`);
    return name === "--help" || name === "help" ? 0 : 2;
  }
  return commands[name](args);
}

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
  if (process.env.HORNWEAVE_TRACE !== undefined) process.stderr.write(`${error?.stack}\n`);
  process.exitCode = 1;
}
