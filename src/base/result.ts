/**
 * What was wrong with something a user gave, where, and ways on. Shown to people as it stands.
 */
export interface Problem {
  /** Stable code for programs, e.g. "chord-unknown". */
  readonly code: string;
  /** One clear sentence for people: what was wrong, where, what to do. */
  readonly message: string;
  /** Index into the text the user gave, where the trouble starts. */
  readonly position?: number;
  /** Up to three inputs that would have been read. */
  readonly suggestions?: readonly string[];
}

/** A value, or the problem that kept us from having one. */
export type Result<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/**
 * Wraps a value.
 * @param value - what was found
 * @returns a successful result
 */
export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

/**
 * Wraps a problem with a user's input.
 * @param code - stable code for programs
 * @param message - one sentence for people
 * @param more - position in the input and suggestions, where known
 * @returns a failed result
 */
export function fail(
  code: string,
  message: string,
  more: { readonly position?: number; readonly suggestions?: readonly string[] } = {},
): { readonly ok: false; readonly problem: Problem } {
  return { ok: false, problem: { code, message, ...more } };
}
