import { useState } from "react";
import type { Measured, Metric } from "../../metrics/index.ts";
import { shareOf } from "../map/shade-step.ts";
import { HexagonSign, hexagonPath } from "../parts/hexagon.tsx";
import { page } from "../store.ts";
import { withSigns } from "../words/signs.ts";

const scaleWidth = 160;

/** One measure: number, unit, one sentence, and a scale with this voicing and the textbook one. */
export function MeasureRow(props: {
  readonly metric: Metric;
  readonly measured: Measured;
  readonly reference: Measured | undefined;
  readonly isFirstHeard: boolean;
}) {
  const { metric, measured, reference, isFirstHeard } = props;
  const [isOpen, setOpen] = useState(false);
  const point = () =>
    page.setState({ pointed: { notes: measured.notes, playerIds: measured.playerIds } });
  const unpoint = () => page.setState({ pointed: null });
  return (
    <li
      className={isFirstHeard ? "measure measure-first-heard" : "measure"}
      onPointerEnter={point}
      onPointerLeave={unpoint}
      data-metric={metric.id}
    >
      <div className="measure-head">
        <h3>
          <button
            type="button"
            aria-expanded={isOpen}
            title={metric.meaning}
            onFocus={point}
            onBlur={unpoint}
            onClick={() => setOpen(!isOpen)}
          >
            {metric.label}
          </button>
        </h3>
        <p>
          <b>{measured.text}</b> {measured.value === null ? "" : metric.unit}
        </p>
      </div>
      <p className="measure-words">{withSigns(measured.detail)}</p>
      {isOpen && (
        <p className="measure-words measure-meaning">
          {metric.meaning} Source: {metric.source}.
        </p>
      )}
      <Scale metric={metric} value={measured.value} reference={reference} />
    </li>
  );
}

/** The measure's scale: a bar for this voicing, a hexagon for the textbook one. */
function Scale(props: {
  readonly metric: Metric;
  readonly value: number | null;
  readonly reference: Measured | undefined;
}) {
  const { metric, value, reference } = props;
  const [low, high] = metric.axis;
  const x = (number: number) => 7 + (scaleWidth - 14) * shareOf(number, metric.axis);
  return (
    <div className="scale" title={`Scale from ${low} to ${high} ${metric.unit}`}>
      <svg width={scaleWidth} height="18" viewBox={`0 0 ${scaleWidth} 18`} aria-hidden="true">
        <path className="scale-line" d={`M1,9H${scaleWidth - 1}M1,6V12M${scaleWidth - 1},6V12`} />
        {reference !== undefined && reference.value !== null && (
          <path className="scale-book" d={hexagonPath(x(reference.value), 9, 5.6)} />
        )}
        {value !== null && (
          <rect className="scale-this" x={x(value) - 1.6} y={1} width="3.2" height="16" />
        )}
      </svg>
      {reference !== undefined && (
        <span>
          <HexagonSign />
          <span className="unseen">by section: </span>
          {reference.text}
        </span>
      )}
    </div>
  );
}
