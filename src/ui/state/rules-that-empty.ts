import type { Question, RuleId } from "../../voicing/index.ts";

/** Rules that say what the question is; lifting one asks something else. */
const framing: readonly RuleId[] = ["H1", "H2", "H3"];

/**
 * Finds a smallest set of rules that, lifted together, opens an empty place. One rule if one is
 * enough; else all rules are lifted and put back one by one, keeping out those that matter. Rules
 * of good sound are tried before those that say what is asked (melody on top, tones, ranges).
 * @param question - the question under which the place is empty
 * @param isOpen - whether the place has a voicing under a changed question
 * @returns the rules; empty when lifting them all does not help
 */
export function rulesThatEmpty(
  question: Question,
  isOpen: (asked: Question) => boolean,
): readonly RuleId[] {
  const opens = (lifted: readonly RuleId[]) => isOpen(withoutRules(question, lifted));
  const on = (Object.keys(question.rules) as RuleId[]).filter((rule) => question.rules[rule]);
  const ofSound = on.filter((rule) => !framing.includes(rule));
  return smallest(ofSound, opens) ?? smallest(on, opens) ?? [];
}

/** A smallest set among some rules; null when lifting them all does not help. */
function smallest(
  rules: readonly RuleId[],
  opens: (lifted: readonly RuleId[]) => boolean,
): readonly RuleId[] | null {
  const single = rules.find((rule) => opens([rule]));
  if (single !== undefined) return [single];
  if (!opens(rules)) return null;
  return rules.reduce<readonly RuleId[]>((lifted, rule) => {
    const fewer = lifted.filter((other) => other !== rule);
    return opens(fewer) ? fewer : lifted;
  }, rules);
}

/**
 * The same question with some rules switched off.
 * @param question - any question
 * @param lifted - rules to switch off
 * @returns a new question
 */
export function withoutRules(question: Question, lifted: readonly RuleId[]): Question {
  const rules = { ...question.rules };
  for (const rule of lifted) rules[rule] = false;
  return { ...question, rules };
}
