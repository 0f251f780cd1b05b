export type * from "./voicing-types.ts";
export { stackOf } from "./stack.ts";
export { allRules, ruleTable, type RuleRow } from "./rule-table.ts";
export { bestOfCell, searchAtlas, type SearchOptions } from "./search.ts";
export { emptiedBy } from "./emptied-by.ts";
export { costOf, isLine } from "./explain.ts";
export { brokenRules } from "./broken-rules.ts";
export { remarksOn, voicingOf } from "./voicing-of.ts";
export * from "./techniques/index.ts";
