import type { Command } from "./option-types.ts";

/** All commands, in the order of the help text. */
export const commands: readonly Command[] = [];
