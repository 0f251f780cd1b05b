import type { Count } from "../base/index.ts";
import type { CostTerm } from "./voicing-types.ts";

/**
 * A term of a cost.
 * @param id - row of the cost tables
 * @param value - what it costs
 * @param subject - what it is about, the beginning of the sentence
 * @param predicate - the rest of the sentence, with the space or comma before it
 * @returns the term
 * @example term("S4", 1, "the third", " sounds in two octaves").text // "the third sounds in two octaves"
 */
export function term(id: string, value: Count, subject: string, predicate: string): CostTerm {
  return { id, value, subject, text: `${subject}${predicate}` };
}
