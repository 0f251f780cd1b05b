import type { Command, Option } from "./option-types.ts";
import { commonOptions } from "./read-options.ts";
import { inColumns } from "./columns.ts";

const call = "npm run --silent hornweave --";

/**
 * What there is.
 * @param commands - all commands
 * @returns lines for people
 */
export function overview(commands: readonly Command[]): string {
  const rows = commands.map(({ name, summary }) => [`  ${name}`, summary]);
  return [
    "Hornweave: every texture that a chord and a melody note allow, voiced for the horns.\n",
    `Usage: ${call} <command> [options]\n`,
    inColumns([["Commands:"], ...rows]),
    `"${call} <command> --help" explains one of them.\n`,
  ].join("\n");
}

/**
 * One command explained.
 * @param command - which
 * @returns lines for people
 */
export function commandHelp(command: Command): string {
  const plain = command.options.filter((option) => option.isPlain === true);
  const words = plain.map((option) => ` ${option.name.toUpperCase()}`).join("");
  return [
    `${call} ${command.name}${words} [options]`,
    `${command.summary}.\n`,
    inColumns([["Options:"], ...[...command.options, ...commonOptions].map(optionRow)]),
  ].join("\n");
}

const valueForms = { text: " …", whole: " N", number: " N", list: " A,B,…", switch: "" } as const;

function optionRow(option: Option): readonly string[] {
  const form =
    option.isPlain === true
      ? option.name.toUpperCase()
      : `--${option.name}${option.choices?.length ? ` ${option.choices.join("|")}` : valueForms[option.kind]}`;
  return [`  ${form}`, option.words + (option.isRequired === true ? " (needed)" : "")];
}
