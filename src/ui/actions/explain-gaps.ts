import { ruleTexts } from "../../explore/index.ts";
import type { CellKey, Question, RuleId } from "../../voicing/index.ts";
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
      const found = await atlasLink().whyEmpty(asked.question, key, map.layer);
      for (const rule of found) rules.add(rule);
      if (page.getState().answer?.map !== map) return;
    }
    words.set(gap.from, gapWords([...rules]));
  }
  const now = page.getState().answer;
  if (now?.map === map) page.setState({ answer: { ...now, gapWords: words } });
}

/** A few places in a gap whose lowest note is ticked: the others need no reason. */
function keysIn(
  gap: { readonly from: number; readonly to: number },
  question: Question,
): CellKey[] {
  const { chord, lead, ticked, players } = question;
  const spans: number[] = [];
  for (let span = gap.from; span <= gap.to; span += 1) {
    const above = (((lead - span - chord.rootPitchClass) % 12) + 12) % 12;
    if (ticked.includes(above)) spans.push(span);
  }
  const notes = Math.min(6, players.length);
  return spans.slice(0, mostAsked).map((span) => ({ span, notes, players: players.length }));
}

function gapWords(rules: readonly RuleId[]): string {
  if (rules.length === 0) return "no ticked tone";
  const names = rules.map((rule) => ruleTexts.find((text) => text.id === rule)?.name ?? rule);
  return `none: ${listed(names.map((name) => name.charAt(0).toLowerCase() + name.slice(1)))}`;
}
