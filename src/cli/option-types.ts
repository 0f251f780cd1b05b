import type { Problem } from "../base/index.ts";

/** One option of a command, as flag and as field of a batch request. */
export interface Option {
  /** Without the hyphens: "chord". */
  readonly name: string;
  /** `text`: as typed; `whole`: a whole number; `number`; `list`: words with commas; `switch`. */
  readonly kind: "text" | "whole" | "number" | "list" | "switch";
  /** What may be given, where that is a closed set. */
  readonly choices?: readonly string[];
  readonly isRequired?: boolean;
  /** True for the word that needs no flag: `chord F13`. */
  readonly isPlain?: boolean;
  /** For the help text: what it is, its unit and what holds without it. */
  readonly words: string;
}

/** What was asked of a command, checked for form. */
export type Request = Readonly<Record<string, string | number | boolean | readonly string[]>>;

/** What a command answers: data for programs and text for people, or the problem. */
export type Answer =
  | { readonly ok: true; readonly data: unknown; readonly text: () => string }
  | { readonly ok: false; readonly problem: Problem };

/** One command of the command line. */
export interface Command {
  readonly name: string;
  readonly summary: string;
  readonly options: readonly Option[];
  readonly run: (request: Request) => Answer | Promise<Answer>;
}
