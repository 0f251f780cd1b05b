import type { AtlasCell, Question } from "../../voicing/index.ts";
import type { Shade } from "../search-messages.ts";
import { draftPath, draftRows, draftSections, type Box, type DraftRows } from "./draft.ts";
import { shadeStep, shareOf } from "./shade-step.ts";

/** Section and pitch of every player that sounds in a cell. */
function rowsOfCell(cell: AtlasCell, question: Question): DraftRows {
  return draftRows(
    question.players.flatMap((player, index) => {
      const pitch = cell.pitches[index] ?? 0;
      return pitch > 0 ? [{ section: player.section, pitch }] : [];
    }),
  );
}

/** The part of a place that holds the weave; the small bar stands left of it. */
function draftBox(place: Box): Box {
  const bar = place.width * 0.17;
  return {
    x: place.x + bar,
    y: place.y + 2.5,
    width: place.width - bar - 1.5,
    height: place.height - 5,
  };
}

/** One texture of the map: its weave on a ground shaded by the chosen measure, beside a small bar. */
export function Swatch(props: {
  readonly cell: AtlasCell;
  readonly question: Question;
  readonly place: Box;
  readonly shade: Shade | undefined;
  readonly axis: readonly [low: number, high: number];
}) {
  const { cell, question, place, shade, axis } = props;
  const step = shade === undefined ? null : shadeStep(shade.value, axis);
  if (cell.family === "line") return <LineMark place={place} />;
  const rows = rowsOfCell(cell, question);
  const box = draftBox(place);
  const path = draftSections.map((section) => draftPath(rows, section, box)).join("");
  return (
    <g className={`swatch shade-${step ?? "none"}`}>
      <rect className="ground" {...place} />
      {shade !== undefined && shade.value !== null && (
        <ShadeBar place={place} share={shareOf(shade.value, axis)} />
      )}
      <path className="draft" d={path} />
    </g>
  );
}

/** The small bar: the measure once more, without relying on the shade. */
function ShadeBar({ place, share }: { readonly place: Box; readonly share: number }) {
  const tall = Math.max(1, (place.height - 4) * share);
  return (
    <rect
      className="bar"
      x={place.x + 2}
      y={place.y + place.height - 2 - tall}
      width={2}
      height={tall}
    />
  );
}

/** Unison and octaves: parallel bars without a ground. */
function LineMark({ place }: { readonly place: Box }) {
  const { x, y, width, height } = place;
  const inset = width * 0.18;
  return (
    <g className="line-mark">
      <rect x={x + inset} y={y + height / 2 - 5} width={width - 2 * inset} height={3} />
      <rect x={x + inset} y={y + height / 2 + 2} width={width - 2 * inset} height={3} />
    </g>
  );
}

/** The swatch of the voicing in view: the only one that is dyed. */
export function SwatchHere({ rows, place }: { readonly rows: DraftRows; readonly place: Box }) {
  const box = draftBox(place);
  return (
    <g className="swatch-here">
      <rect className="ground" {...place} />
      {draftSections.map((section) => (
        <path key={section} className={`mark-${section}`} d={draftPath(rows, section, box)} />
      ))}
      <rect
        className="frame"
        x={place.x - 3.5}
        y={place.y - 3.5}
        width={place.width + 7}
        height={place.height + 7}
      />
    </g>
  );
}
