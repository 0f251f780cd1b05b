import { fail, ok, type Result } from "../base/index.ts";
import type { Command, Option, Request } from "./option-types.ts";

type Value = Request[string];

const switchOf = (name: string, words: string): Option => ({ name, kind: "switch", words });

/** Options that every command takes on the command line, though not in a batch request. */
export const commonOptions: readonly Option[] = [
  switchOf("json", "answer with one line of JSON"),
  switchOf("batch", "read requests from stdin, one line of JSON each, and answer each with a line"),
  switchOf("help", "show this text"),
];

/**
 * Reads the words after a command's name.
 * @param command - whose options they are
 * @param words - "--span", "33", "--json" …
 * @returns the request, common options among it, or the problem: "option-unknown",
 *   "option-twice", "option-missing", "option-value"
 */
export function readFlags(command: Command, words: readonly string[]): Result<Request> {
  const request: Record<string, Value> = {};
  const rest = [...words];
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    const [name = "", inline] = splitFlag(word);
    const option = word.startsWith("--")
      ? optionNamed(command, name)
      : command.options.find((each) => each.isPlain === true && !(each.name in request));
    if (option === undefined) return unknownOption(command, word);
    if (option.name in request)
      return fail("option-twice", `--${option.name} is given twice; give it once.`);
    const given = word.startsWith("--") ? inline : word;
    const value = readFlag(option, given, rest);
    if (!value.ok) return value;
    request[option.name] = value.value;
  }
  return isFree(request) ? ok(request) : complete(command, request);
}

/**
 * Reads a batch request: the flags as fields of an object.
 * @param command - whose options they are
 * @param fields - what the line held
 * @param defaults - flags of the command line, which hold where the line says nothing
 * @returns the request, or the problem: "request-unreadable" or as in readFlags
 */
export function readFields(
  command: Command,
  fields: unknown,
  defaults: Request = {},
): Result<Request> {
  if (typeof fields !== "object" || fields === null || Array.isArray(fields))
    return fail("request-unreadable", 'A request is a JSON object such as {"chord": "F13"}.');
  const request: Record<string, Value> = {};
  for (const [name, given] of Object.entries(fields)) {
    const option = command.options.find((each) => each.name === name);
    if (option === undefined) return unknownOption(command, name);
    if (given === null || given === undefined) continue;
    const value = readField(option, given);
    if (!value.ok) return value;
    request[name] = value.value;
  }
  return complete(command, { ...defaults, ...request });
}

function splitFlag(word: string): readonly [string, string | undefined] {
  const at = word.indexOf("=");
  return at < 0 ? [word.slice(2), undefined] : [word.slice(2, at), word.slice(at + 1)];
}

const optionNamed = (command: Command, name: string): Option | undefined =>
  [...command.options, ...commonOptions].find((each) => each.name === name);

/** Help asks for nothing else, and a batch may get the rest from its lines. */
const isFree = (request: Request): boolean => request["help"] === true || request["batch"] === true;

/** The value of a flag: after "=", or the next word; a switch has none. */
function readFlag(option: Option, inline: string | undefined, rest: string[]): Result<Value> {
  if (option.kind === "switch")
    return inline === undefined
      ? ok(true)
      : fail("option-value", `--${option.name} stands alone and takes no value.`);
  const text = inline ?? (rest[0]?.startsWith("--") === true ? undefined : rest.shift());
  if (text === undefined) return fail("option-value", `--${option.name} needs a value.`);
  return readText(option, text);
}

function readField(option: Option, given: unknown): Result<Value> {
  if (option.kind === "switch")
    return typeof given === "boolean"
      ? ok(given)
      : fail("option-value", `${option.name} is true or false.`);
  if (option.kind === "list" && Array.isArray(given)) return readText(option, given.join(","));
  if (option.kind === "list" && typeof given === "object")
    return readText(option, pairsOf(given as Readonly<Record<string, unknown>>));
  if (typeof given !== "string" && typeof given !== "number")
    return fail("option-value", `${option.name} is a text or a number.`);
  return readText(option, String(given));
}

/** {"tpt1": "D5"} says the same as "tpt1=D5". */
const pairsOf = (given: Readonly<Record<string, unknown>>): string =>
  Object.entries(given)
    .map(([name, value]) => `${name}=${String(value)}`)
    .join(",");

function readText(option: Option, text: string): Result<Value> {
  const given = text.trim();
  if (option.kind === "list") return readList(option, given);
  if (option.kind === "whole" || option.kind === "number") return readNumber(option, given);
  return isChoice(option, given) ? ok(given) : notAChoice(option, given);
}

function readList(option: Option, given: string): Result<Value> {
  const words = given === "" ? [] : given.split(",").map((word) => word.trim());
  const wrong = words.find((word) => !isChoice(option, word));
  return wrong === undefined ? ok(words) : notAChoice(option, wrong);
}

const isChoice = ({ choices }: Option, word: string): boolean =>
  choices === undefined || choices.includes(word);

const notAChoice = ({ name, choices = [] }: Option, word: string): Result<Value> =>
  fail("option-value", `--${name} is one of ${choices.join(", ")}, not "${word}".`, {
    suggestions: choices.slice(0, 3),
  });

function readNumber(option: Option, given: string): Result<Value> {
  const pattern = option.kind === "whole" ? /^\d{1,9}$/ : /^\d{1,9}(\.\d+)?$/;
  const kind = option.kind === "whole" ? "a whole number" : "a number";
  if (pattern.test(given)) return ok(Number(given));
  return fail("option-value", `--${option.name} is ${kind} from 0 up, not "${given}".`);
}

function complete(command: Command, request: Request): Result<Request> {
  const missing = command.options.find(
    (option) => option.isRequired === true && !(option.name in request),
  );
  if (missing === undefined) return ok(request);
  const form = missing.isPlain === true ? missing.name.toUpperCase() : `--${missing.name}`;
  return fail("option-missing", `${command.name} needs ${form}: ${missing.words}.`);
}

function unknownOption(command: Command, word: string): Result<never> {
  const names = command.options.map((option) => `--${option.name}`).join(", ");
  return fail("option-unknown", `${command.name} does not know "${word}"; it takes ${names}.`);
}
