import { ruleTexts } from "../../explore/index.ts";
import type { CellKey, Question, RuleId } from "../../voicing/index.ts";
import { tickedSpans } from "../map/map-places.ts";
import { gapsOf } from "../map/map-plan.ts";
import { page } from "../store.ts";
import { listed } from "../words/counts.ts";
import { atlasLink } from "./atlas-link.ts";

/** Spans of one gap that are asked about; a gap that needs more is asked about at its ends. */
const mostAsked = 3;

/** Finds out, after the search, which rules empty the map's hatched gaps, and says it there. */
export async function explainGaps(): Promise<void> {
  const { answer } = page.getState();
  if (answer === null) return;
  const { asked, map } = answer;
  const words = new Map<number, string>();
  for (const gap of gapsOf(map.cells.map((cell) => cell.key.span))) {
    const rules = new Set<RuleId>();
    for (const key of keysIn(gap, asked.question)) {
      const found = await atlasLink().whyEmpty(asked.question, key, map);
      for (const rule of found) rules.add(rule);
      if (page.getState().answer?.map !== map) return;
    }
    words.set(gap.from, gapWords([...rules]));
  }
  const now = page.getState().answer;
  if (now?.map === map) page.setState({ answer: { ...now, gapWords: words } });
}

/** A few places in a gap whose lowest note is ticked. */
function keysIn(
  gap: { readonly from: number; readonly to: number },
  question: Question,
): readonly CellKey[] {
  const players = question.players.length;
  const notes = Math.min(6, players);
  return tickedSpans(gap, question)
    .slice(0, mostAsked)
    .map((span) => ({ span, notes, players }));
}

function gapWords(rules: readonly RuleId[]): string {
  if (rules.length === 0) return "no ticked tone";
  const names = rules.map((rule) => ruleTexts.find((text) => text.id === rule)?.name ?? rule);
  return `none: ${listed(names.map((name) => name.charAt(0).toLowerCase() + name.slice(1)))}`;
}
