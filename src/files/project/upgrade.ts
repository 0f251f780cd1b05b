import { fail, ok, type Count, type Result } from "../../base/index.ts";

/** One step: turns data of a format into data of the next one. */
export type UpgradeStep = (data: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/**
 * Steps of the project file, the first from format 1 to 2. Each is written once, never changed, and
 * has an old sample file beside its test.
 */
export const projectSteps: readonly UpgradeStep[] = Object.freeze([toSeatsAndPhrases]);

/** Format 1 knew no moved chairs and no phrases. */
function toSeatsAndPhrases(data: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const tables = ["texts", "notes", "melodies", "curves", "choices", "locks", "marks", "phrases"];
  return { ...data, seatings: [], ...Object.fromEntries(tables.map((name) => [name, []])) };
}

/**
 * Brings data up to the current format, one step after the other.
 * @param data - a parsed file
 * @param steps - one for each format but the current
 * @returns data of format steps.length + 1, not yet checked; or the problem "project-format",
 *   "project-newer"
 */
export function upgraded(data: unknown, steps: readonly UpgradeStep[]): Result<unknown> {
  const current = steps.length + 1;
  if (typeof data !== "object" || data === null || Array.isArray(data)) return noProject();
  const format: unknown = (data as Readonly<Record<string, unknown>>)["format"];
  if (typeof format !== "number" || !Number.isInteger(format) || format < 1) return noProject();
  if (format > current)
    return fail(
      "project-newer",
      `This project was saved by a newer version (format ${format}; this one reads up to ${current}).`,
    );
  let now = data as Record<string, unknown>;
  for (let at: Count = format; at < current; at += 1)
    now = { ...steps[at - 1]!(now), format: at + 1 };
  return ok(now);
}

const noProject = (): Result<never> =>
  fail("project-format", "This file is not a project: it has no format number.");
