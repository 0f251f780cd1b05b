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
      <Guides plan={plan} here={here} />
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
      <SpanAxis plan={plan} here={here} answer={answer} />
    </g>
  );
}

/** From the axes to the place in view. */
function Guides({ plan, here }: { readonly plan: MapPlan; readonly here: CellKey }) {
  const x = plan.xOf(here.span) + plan.placeWidth / 2;
  const y = plan.yOf(here.notes) + plan.placeHeight / 2;
  return (
    <>
      <rect className="guide" x={0} y={y - 0.5} width={Math.max(0, x)} height={1} />
      <rect
        className="guide"
        x={x - 0.5}
        y={y}
        width={1}
        height={Math.max(0, plan.height - y + 8)}
      />
    </>
  );
}

/** Lowest note and span of every column; the one in view stands out, even between two columns. */
function SpanAxis(props: {
  readonly plan: MapPlan;
  readonly here: CellKey;
  readonly answer: Answer;
}) {
  const { plan, here, answer } = props;
  const { lead } = answer.asked.question;
  const middle = plan.placeWidth / 2;
  const half = Math.max(17, middle);
  // A span between two columns needs the room of its neighbours' names.
  const isClear = (span: number) => Math.abs(plan.xOf(span) - plan.xOf(here.span)) >= half + 10;
  const spans = [here.span, ...plan.spans.filter((span) => span !== here.span && isClear(span))];
  return (
    <>
      <rect
        className="tab"
        x={plan.xOf(here.span) + middle - half}
        y={plan.height + 4}
        width={2 * half}
        height={32}
      />
      {spans.map((span) => {
        const x = plan.xOf(span) + middle;
        return (
          <g key={span} className={span === here.span ? "axis-here" : ""}>
            <text className="axis" x={x} y={plan.height + 17} textAnchor="middle">
              {withSigns(answer.asked.nameOf(lead - span).name)}
            </text>
            <text className="axis-low" x={x} y={plan.height + 31} textAnchor="middle">
              {span}
            </text>
          </g>
        );
      })}
    </>
  );
}
