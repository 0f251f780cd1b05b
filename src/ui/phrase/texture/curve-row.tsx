import { useRef, useState, type KeyboardEvent, type PointerEvent } from "react";
import { quantity } from "../../../base/index.ts";
import type { Curve } from "../../../phrase/index.ts";
import {
  barCount,
  barStart,
  placeText,
  type Divisions,
  type Melody,
} from "../../../theory/index.ts";
import { useSize } from "../../parts/use-size.ts";
import { askCurve, withNewPoint, withoutPoint, withPoint } from "./curve-moves.ts";
import type { CurveRow } from "./curve-table.ts";

/** What was got at one moment. */
export interface Got {
  readonly from: number;
  readonly to: number;
  readonly value: number;
}

const height = 64;
const pad = 7;

interface RowProps {
  readonly row: CurveRow;
  readonly curve: Curve;
  readonly most: number;
  readonly got: readonly Got[];
  /** Repeats written out. */
  readonly melody: Melody;
  /** Time of the moment the user is at. */
  readonly here: number | null;
}

/** One curve over the bars: asked for as a line with points, got as the ground below it. */
export function CurveRowView(props: RowProps) {
  const { row, curve, most, got, melody, here } = props;
  const [room, { width }] = useSize<HTMLDivElement>({ width: 800, height });
  const [drawn, setDrawn] = useState<Curve | null>(null);
  const shown = drawn ?? curve;
  const high = row.high ?? most;
  const scale: Scale = { width, length: melody.length, low: row.low, high };
  return (
    <div className="curve-row">
      <div className="curve-name">
        <b>{row.name}</b>
        <span className="quiet">{row.meaning}</span>
      </div>
      <div className="curve-room" ref={room}>
        <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
          <Bars melody={melody} scale={scale} />
          <path className="curve-got" d={gotPath(got, scale)} />
          {here !== null && (
            <line
              className="curve-here"
              x1={xAt(here, scale)}
              x2={xAt(here, scale)}
              y1={0}
              y2={height}
            />
          )}
          <path className="curve-asked" d={askedPath(shown, scale)} />
        </svg>
        <Points {...props} shown={shown} scale={scale} onDraw={setDrawn} />
      </div>
    </div>
  );
}

interface Scale {
  readonly width: number;
  readonly length: number;
  readonly low: number;
  readonly high: number;
}

const xAt = (at: number, { width, length }: Scale): number =>
  pad + (at / Math.max(1, length)) * (width - 2 * pad);
function yAt(value: number, { low, high }: Scale): number {
  const bounded = Math.max(low, Math.min(high, value));
  return height - pad - ((bounded - low) / Math.max(0.1, high - low)) * (height - 2 * pad);
}

function Bars({ melody, scale }: { readonly melody: Melody; readonly scale: Scale }) {
  const bars = Array.from({ length: barCount(melody) }, (_, index) => index + 1);
  return bars.map((bar) => {
    const x = xAt(barStart(melody, bar), scale);
    return (
      <g key={bar}>
        <line className="curve-bar" x1={x} x2={x} y1={0} y2={height} />
        <text className="bar-number" x={x + 3} y={10}>
          {bar}
        </text>
      </g>
    );
  });
}

function gotPath(got: readonly Got[], scale: Scale): string {
  return got
    .map(({ from, to, value }) => {
      const [left, right] = [xAt(from, scale), xAt(to, scale)];
      return `M${left},${height}V${yAt(value, scale)}H${right}V${height}Z`;
    })
    .join("");
}

function askedPath(curve: Curve, scale: Scale): string {
  const [first] = curve;
  if (first === undefined) return "";
  const start = `M${pad},${yAt(first.value, scale)}`;
  const middle = curve.map(({ at, value }) => `L${xAt(at, scale)},${yAt(value, scale)}`).join("");
  return `${start}${middle}H${scale.width - pad}`;
}

type PointsProps = RowProps & {
  readonly shown: Curve;
  readonly scale: Scale;
  readonly onDraw: (curve: Curve | null) => void;
};

/** The points as sliders; a press beside them makes a new one. */
function Points(props: PointsProps) {
  const { row, curve, melody, shown, scale, onDraw } = props;
  const dragging = useRef<{ readonly index: number; curve: Curve } | null>(null);
  const box = useRef<HTMLDivElement>(null);
  const valueOf = (event: PointerEvent) => {
    const room = box.current?.getBoundingClientRect();
    if (room === undefined) return { at: 0, value: scale.low };
    const x = (event.clientX - room.left - pad) / (room.width - 2 * pad);
    const y = (height - pad - (event.clientY - room.top)) / (height - 2 * pad);
    const share = Math.max(0, Math.min(1, y));
    return {
      at: Math.max(0, Math.min(1, x)) * melody.length,
      value: scale.low + share * (scale.high - scale.low),
    };
  };
  const drag = (event: PointerEvent, index: number, from: Curve) => {
    const { at, value } = valueOf(event);
    const rounded = Math.round(value / row.step) * row.step;
    const next = withPoint(from, index, at, rounded, melody.length);
    dragging.current = { index, curve: next };
    onDraw(next);
  };
  const begin = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const own = (event.target as HTMLElement).dataset["point"];
    if (own !== undefined) return void (dragging.current = { index: Number(own), curve });
    const { curve: more, index } = withNewPoint(curve, valueOf(event).at);
    drag(event, index, more);
  };
  const end = () => {
    const now = dragging.current;
    dragging.current = null;
    onDraw(null);
    if (now !== null && now.curve !== curve)
      askCurve(row.id, now.curve, `${row.name.toLowerCase()} curve`);
  };
  return (
    <div
      className="curve-points"
      ref={box}
      onPointerDown={begin}
      onPointerMove={(event) => {
        if (dragging.current !== null) drag(event, dragging.current.index, dragging.current.curve);
      }}
      onPointerUp={end}
      onPointerCancel={end}
    >
      {shown.map((point, index) => (
        <Point key={index} {...props} index={index} at={point.at} value={point.value} />
      ))}
    </div>
  );
}

function Point(
  props: PointsProps & {
    readonly index: number;
    readonly at: Divisions;
    readonly value: number;
  },
) {
  const { row, curve, melody, scale, index, at, value } = props;
  const keyed = (event: KeyboardEvent) => {
    const next = keyMove(event, props);
    if (next === undefined) return;
    event.preventDefault();
    askCurve(row.id, next, `${row.name.toLowerCase()} curve`);
  };
  const shownValue = row.step < 1 ? value.toFixed(1) : String(Math.round(value));
  return (
    <button
      type="button"
      role="slider"
      className="curve-point"
      data-point={index}
      aria-label={`${row.name} at ${placeText(melody, quantity<Divisions>(Math.min(at, melody.length)))}`}
      aria-valuemin={row.low}
      aria-valuemax={scale.high}
      aria-valuenow={value}
      aria-valuetext={`${shownValue} ${row.unit}, point ${index + 1} of ${curve.length}`}
      title={`${shownValue} ${row.unit}`}
      ref={(button) => {
        button?.style.setProperty("left", `${xAt(at, scale)}px`);
        button?.style.setProperty("top", `${yAt(value, scale)}px`);
      }}
      onKeyDown={keyed}
    />
  );
}

/** What a key makes of the curve; undefined for other keys. */
function keyMove(
  { key }: KeyboardEvent,
  {
    row,
    curve,
    melody,
    scale,
    index,
    at,
    value,
  }: PointsProps & {
    readonly index: number;
    readonly at: Divisions;
    readonly value: number;
  },
): Curve | undefined {
  const beat = (4 * melody.division) / melody.metre.beatType;
  const to = (time: number, next: number) =>
    withPoint(curve, index, time, Math.max(row.low, Math.min(scale.high, next)), melody.length);
  const values: Readonly<Record<string, number>> = {
    ArrowUp: value + row.step,
    ArrowDown: value - row.step,
    PageUp: value + 5 * row.step,
    PageDown: value - 5 * row.step,
    Home: row.low,
    End: scale.high,
  };
  const next = values[key];
  if (next !== undefined) return to(at, next);
  if (key === "ArrowLeft") return to(at - beat, value);
  if (key === "ArrowRight") return to(at + beat, value);
  if (key === "Delete" || key === "Backspace") return withoutPoint(curve, index);
  if (key !== "Insert" && key !== "+") return undefined;
  const after = curve[index + 1]?.at ?? melody.length;
  return withNewPoint(curve, (at + after) / 2).curve;
}
