import { atlasCommand } from "./atlas-command.ts";
import { chordCommand } from "./chord-command.ts";
import { exportCommand } from "./export-command.ts";
import { measureCommand } from "./measure-command.ts";
import { phraseCommand } from "./phrase-command.ts";
import { renderCommand } from "./render-command.ts";
import type { Command } from "./option-types.ts";
import { voicingsCommand } from "./voicings-command.ts";

/** All commands, in the order of the help text. */
export const commands: readonly Command[] = [
  chordCommand,
  voicingsCommand,
  atlasCommand,
  measureCommand,
  renderCommand,
  exportCommand,
  phraseCommand,
];
