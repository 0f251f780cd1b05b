import { createInterface } from "node:readline";
import type { Problem } from "../base/index.ts";
import { commands } from "./commands.ts";
import { commandHelp, overview } from "./help-text.ts";
import type { Answer, Command, Request } from "./option-types.ts";
import { readFields, readFlags } from "./read-options.ts";

/** Where the command line reads and writes; the process itself unless a test gives its own. */
export interface Streams {
  readonly input: NodeJS.ReadableStream;
  readonly output: { write(text: string): unknown };
  readonly errors: { write(text: string): unknown };
}

/**
 * Runs the command line.
 * @param words - what stands after the program's name
 * @param streams - where to read and write
 * @returns exit code: 0 for an answer, 2 for bad input
 */
export async function main(words: readonly string[], streams?: Streams): Promise<number> {
  const { input, output, errors } = streams ?? processStreams();
  const [name = "", ...rest] = words;
  const command = commands.find((each) => each.name === name);
  if (command === undefined) {
    const isHelp = ["", "help", "--help"].includes(name);
    if (isHelp) output.write(overview(commands));
    else errors.write(`${unknownCommand(name)}\n`);
    return isHelp ? 0 : 2;
  }
  const request = readFlags(command, rest);
  if (!request.ok) return refuse(request.problem, errors);
  if (request.value["help"] === true) {
    output.write(commandHelp(command));
    return 0;
  }
  if (request.value["batch"] === true) return batch(command, request.value, input, output);
  const answer = await command.run(request.value);
  if (!answer.ok) return refuse(answer.problem, errors);
  const { data, text } = answer;
  output.write(request.value["json"] === true ? `${JSON.stringify(data)}\n` : text());
  return 0;
}

function processStreams(): Streams {
  // A reader that stops early ("| head") is no fault of ours.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(0);
    throw error;
  });
  return { input: process.stdin, output: process.stdout, errors: process.stderr };
}

function unknownCommand(name: string): string {
  const names = commands.map((command) => command.name).join(", ");
  return `There is no command "${name}"; there are ${names}.`;
}

function refuse(problem: Problem, errors: Streams["errors"]): number {
  errors.write(`${sentenceOf(problem)}\n`);
  return 2;
}

/** One sentence, with the suggestions when it does not name them itself. */
function sentenceOf({ message, suggestions = [] }: Problem): string {
  const unnamed = suggestions.filter((suggestion) => !message.includes(suggestion));
  if (unnamed.length === 0 || unnamed.length < suggestions.length) return message;
  return `${message.replace(/\.$/, "")} (try ${unnamed.join(", ")}).`;
}

/** One line in, one line out, in order; a line that cannot be answered does not stop the rest. */
async function batch(
  command: Command,
  { json: _json, batch: _batch, ...defaults }: Request,
  input: NodeJS.ReadableStream,
  output: Streams["output"],
): Promise<number> {
  for await (const line of createInterface({ input, crlfDelay: Infinity })) {
    if (line.trim() === "") continue;
    const answer = await answerLine(command, line, defaults);
    const data = answer.ok ? answer.data : { error: errorOf(answer.problem) };
    output.write(`${JSON.stringify(data)}\n`);
  }
  return 0;
}

async function answerLine(command: Command, line: string, defaults: Request): Promise<Answer> {
  const fields = parsed(line);
  if (fields === undefined) return unanswered("request-unreadable", "The line is not JSON.");
  const request = readFields(command, fields.value, defaults);
  if (!request.ok) return request;
  try {
    return await command.run(request.value);
  } catch (error) {
    // A fault of ours: the line gets its answer, and the lines after it theirs.
    return unanswered("internal", error instanceof Error ? error.message : String(error));
  }
}

const unanswered = (code: string, message: string): Answer => ({
  ok: false,
  problem: { code, message },
});

function parsed(line: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(line) as unknown };
  } catch {
    return undefined;
  }
}

const errorOf = (problem: Problem) => ({ ...problem, message: sentenceOf(problem) });
