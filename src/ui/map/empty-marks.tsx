import { ruleTexts } from "../../explore/index.ts";
import type { Answer } from "../state/page-state.ts";
import type { MapPlan } from "./map-plan.ts";

/** Width of the words about wide and few, CSS pixels. */
const wideAndFewWidth = 190;

/** Width of a letter in the map's small notes, CSS pixels. */
const letterWidth = 5.6;

/** Why empty places are empty, written in the empty place. */
export function EmptyMarks({ plan, answer }: { readonly plan: MapPlan; readonly answer: Answer }) {
  const corner = wideAndFew(plan, answer);
  return (
    <>
      {plan.gaps.map((gap) => {
        const words = answer.gapWords.get(gap.from);
        if (words === undefined || words.length * letterWidth > plan.height) return null;
        const x = gap.x + gap.width / 2 + 4;
        return (
          <text
            key={gap.from}
            className="why-none why-none-gap"
            transform={`translate(${x} ${plan.height / 2}) rotate(-90)`}
            textAnchor="middle"
          >
            {words}
          </text>
        );
      })}
      {corner !== null && (
        <text className="why-none" x={corner.x} y={corner.y + 10}>
          wide and few: none, neighbours
          <tspan x={corner.x} dy={13}>
            lie at most an octave apart
          </tspan>
        </text>
      )}
    </>
  );
}

function books(notes: number, answer: Answer) {
  return answer.references.map((point) => point.report.cell).filter((key) => key.notes === notes);
}

/** Where the corner of wide and few is free, while the rule that empties it is on. */
function wideAndFew(plan: MapPlan, answer: Answer): { x: number; y: number } | null {
  const rule = ruleTexts.find((text) => text.id === "H8");
  if (rule === undefined || !answer.asked.question.rules.H8) return null;
  const placed = [
    ...answer.map.cells.map((cell) => cell.key),
    ...answer.references.map((point) => point.report.cell),
  ];
  for (const notes of [3, 2, 1].filter((row) => plan.rows.includes(row))) {
    // The hexagons of the row above reach into this one.
    const near = [...placed.filter((key) => key.notes === notes), ...books(notes + 1, answer)];
    const ends = near.map((key) => plan.xOf(key.span) + plan.placeWidth + 12);
    const x = Math.max(plan.xOf(12), ...ends);
    const hasGap = plan.gaps.some((gap) => gap.x < x + wideAndFewWidth && gap.x + gap.width > x);
    if (!hasGap && x + wideAndFewWidth <= plan.width) return { x, y: plan.yOf(notes) };
  }
  return null;
}
