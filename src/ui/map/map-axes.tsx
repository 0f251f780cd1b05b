import type { CellKey } from "../../voicing/index.ts";
import type { Answer } from "../state/page-state.ts";
import { withSigns } from "../words/signs.ts";
import { EmptyMarks } from "./empty-marks.tsx";
import type { MapPlan } from "./map-plan.ts";

/** Room above the places and below them, CSS pixels. */
export const mapRoom = { head: 6, foot: 40 } as const;

/** The notes axis: stays in place when the map scrolls sideways. */
export function NotesAxis({ plan, notes }: { readonly plan: MapPlan; readonly notes: number }) {
  const height = mapRoom.head + plan.height + mapRoom.foot;
  const middle = plan.placeHeight / 2;
  return (
    <svg
      className="notes-axis"
      width="24"
      height={height}
      viewBox={`0 ${-mapRoom.head} 24 ${height}`}
      aria-hidden="true"
    >
      <rect className="tab" x={2} y={plan.yOf(notes) + middle - 10} width={20} height={20} />
      {plan.rows.map((row) => (
        <text
          key={row}
          className={row === notes ? "axis axis-here" : "axis"}
          x={19}
          y={plan.yOf(row) + middle + 4}
          textAnchor="end"
        >
          {row}
        </text>
      ))}
      <text className="axis-low" x={22} y={plan.height + 17} textAnchor="end">
        low
      </text>
      <text className="axis-low" x={22} y={plan.height + 31} textAnchor="end">
        span
      </text>
    </svg>
  );
}

/** Axes in musical units, guides to the place in view, and the hatched gaps. */
export function MapAxes(props: {
  readonly plan: MapPlan;
  readonly here: CellKey;
  readonly answer: Answer;
}) {
  const { plan, here, answer } = props;
  const { lead } = answer.asked.question;
  const middle = plan.placeWidth / 2;
  const hereX = plan.xOf(here.span) + middle;
  const hereY = plan.yOf(here.notes) + plan.placeHeight / 2;
  return (
    <g aria-hidden="true">
      <defs>
        <pattern
          id="hatch"
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="1" height="5" className="hatch" />
        </pattern>
      </defs>
      <rect className="guide" x={0} y={hereY - 0.5} width={Math.max(0, hereX)} height={1} />
      <rect
        className="guide"
        x={hereX - 0.5}
        y={hereY}
        width={1}
        height={Math.max(0, plan.height - hereY + 8)}
      />
      {plan.gaps.map((gap) => (
        <rect
          key={gap.from}
          x={gap.x}
          y={0}
          width={gap.width}
          height={plan.height}
          fill="url(#hatch)"
        />
      ))}
      <EmptyMarks plan={plan} answer={answer} />
      <rect
        className="tab"
        x={hereX - Math.max(17, middle)}
        y={plan.height + 4}
        width={2 * Math.max(17, middle)}
        height={32}
      />
      {plan.spans.map((span) => (
        <g key={span} className={span === here.span ? "axis-here" : ""}>
          <text
            className="axis"
            x={plan.xOf(span) + middle}
            y={plan.height + 17}
            textAnchor="middle"
          >
            {withSigns(answer.asked.nameOf(lead - span).name)}
          </text>
          <text
            className="axis-low"
            x={plan.xOf(span) + middle}
            y={plan.height + 31}
            textAnchor="middle"
          >
            {span}
          </text>
        </g>
      ))}
      {!plan.spans.includes(here.span) && (
        <g className="axis-here">
          <text className="axis" x={hereX} y={plan.height + 17} textAnchor="middle">
            {withSigns(answer.asked.nameOf(lead - here.span).name)}
          </text>
          <text className="axis-low" x={hereX} y={plan.height + 31} textAnchor="middle">
            {here.span}
          </text>
        </g>
      )}
    </g>
  );
}
