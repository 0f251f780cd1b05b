import { ruleTable } from "../voicing/index.ts";
import type { RuleText } from "./inquiry.ts";

/** The hard rules in words, in the order of their ids, for lists of switches. */
export const ruleTexts: readonly RuleText[] = ruleTable;
