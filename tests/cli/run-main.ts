import { Readable } from "node:stream";
import { main } from "../../src/cli/main.ts";

/** What one run of the command line said, and how it ended. */
export interface Run {
  readonly code: number;
  readonly output: string;
  readonly errors: string;
}

/**
 * Runs the command line in this process.
 * @param words - what stands after the program's name
 * @param input - what is typed or piped in
 * @returns exit code and both streams
 */
export async function run(words: readonly string[], input = ""): Promise<Run> {
  const said = { output: "", errors: "" };
  const code = await main(words, {
    input: Readable.from([input]),
    output: { write: (text) => (said.output += text) },
    errors: { write: (text) => (said.errors += text) },
  });
  return { code, ...said };
}

/**
 * Runs a command with --json.
 * @param words - the command and its flags
 * @returns its answer
 */
export async function answerTo(...words: readonly string[]): Promise<unknown> {
  const { code, output, errors } = await run([...words, "--json"]);
  if (code !== 0) throw new Error(errors);
  return JSON.parse(output) as unknown;
}
