import type { Result } from "../base/index.ts";
import { buildInstance } from "./instance.ts";
import type { Instance } from "./instance-types.ts";
import type { Question } from "./voicing-types.ts";

/** Built instances live as long as their questions do. */
const built = new WeakMap<Question, Result<Instance>>();

/**
 * The instance of a question, built once however often the same question is asked: a phrase asks
 * each of its moments three times.
 * @param question - plain data that nobody changes
 * @returns as buildInstance
 */
export function builtInstance(question: Question): Result<Instance> {
  const found = built.get(question) ?? buildInstance(question);
  built.set(question, found);
  return found;
}
