import { searchAtlas } from "./search.ts";
import type { SearchOptions } from "./search-options.ts";
import { ruleTable } from "./rule-table.ts";
import type { Question, RuleId } from "./voicing-types.ts";

/** Reports to wait for a first cell before a rule is taken not to be the reason. */
const patience = 200;

/**
 * For a question without an answer: the rules each of which, dropped alone, would give some.
 * @param question - a question whose atlas is empty
 * @param options - layer and sections as they were asked
 * @returns rule ids; empty when no single rule is the reason
 */
export function emptiedBy(question: Question, options: SearchOptions = {}): readonly RuleId[] {
  return ruleTable
    .map((row) => row.id)
    .filter((id) => question.rules[id])
    .filter((id) => hasCells({ ...question, rules: { ...question.rules, [id]: false } }, options));
}

function hasCells(question: Question, options: SearchOptions): boolean {
  const search = searchAtlas(question, options);
  if (!search.ok) return false;
  let reports = 0;
  for (const { cells } of search.value) {
    if (cells.some((cell) => cell.family === "harmony")) return true;
    if (++reports > patience) return false;
  }
  return false;
}
