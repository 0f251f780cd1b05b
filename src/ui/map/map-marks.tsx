import { memo, useMemo } from "react";
import { metrics } from "../../metrics/index.ts";
import type { AtlasCell, CellKey } from "../../voicing/index.ts";
import { Hexagon } from "../parts/hexagon.tsx";
import { fitsFilter, isFiltering, type CellTraits, type MapFilter } from "../state/map-filter.ts";
import { placeId } from "../state/place-id.ts";
import type { Answer, InView, Shading } from "../state/page-state.ts";
import { usePage } from "../store.ts";
import { draftRows, type Box } from "./draft.ts";
import type { MapPlan } from "./map-plan.ts";
import type { PlacedReference, PlacesAround } from "./map-places.ts";
import { Swatch, SwatchHere } from "./swatch.tsx";

function boxOf(plan: MapPlan, key: Pick<CellKey, "span" | "notes">): Box {
  return {
    x: plan.xOf(key.span),
    y: plan.yOf(key.notes),
    width: plan.placeWidth,
    height: plan.placeHeight,
  };
}

/** Whether a texture is shown in full; a new function whenever filter or traits change. */
function useFits(): (cell: AtlasCell) => boolean {
  const filter = usePage((state) => state.filter);
  const byPlace = usePage((state) => state.traits?.byPlace);
  return useMemo(() => shownIn(filter, byPlace), [filter, byPlace]);
}

function shownIn(filter: MapFilter, byPlace: ReadonlyMap<string, CellTraits> | undefined) {
  return (cell: AtlasCell): boolean => {
    const known = isFiltering(filter) ? byPlace?.get(placeId(cell)) : undefined;
    return known === undefined || fitsFilter(filter, known);
  };
}

/** The swatches of the map, and the one in view on top of them. */
export function MapMarks(props: {
  readonly answer: Answer;
  readonly view: InView;
  readonly plan: MapPlan;
  readonly places: PlacesAround;
  readonly emptyKey: CellKey | null;
}) {
  const { answer, view, plan, places, emptyKey } = props;
  const shading = usePage((state) => state.shading);
  const searching = usePage((state) => state.searching);
  const fits = useFits();
  const rows = draftRows(
    view.voicing.placements.map(({ player, sounding }) => ({
      section: player.section,
      pitch: sounding,
    })),
  );
  return (
    <g aria-hidden="true">
      <Cells answer={answer} plan={plan} places={places} shading={shading} fits={fits} />
      {searching?.isSlow === true && <StillSearching plan={plan} places={places} />}
      {emptyKey === null ? (
        <SwatchHere rows={rows} place={boxOf(plan, view.report.cell)} />
      ) : (
        <EmptyFrame place={boxOf(plan, emptyKey)} />
      )}
    </g>
  );
}

const Cells = memo(function Cells(props: {
  readonly answer: Answer;
  readonly plan: MapPlan;
  readonly places: PlacesAround;
  readonly shading: Shading;
  readonly fits: (cell: AtlasCell) => boolean;
}) {
  const { answer, plan, places, shading, fits } = props;
  const metric = metrics.find((candidate) => candidate.id === shading.metricId);
  return (
    <>
      {places.others.map((other) => {
        const box = boxOf(plan, other);
        return (
          <g key={`${other.span}/${other.notes}`} className="other-count">
            <rect x={box.x + 0.5} y={box.y + 0.5} width={box.width - 1} height={box.height - 1} />
            <text x={box.x + 4} y={box.y + box.height / 2 + 3}>
              {other.text}
            </text>
          </g>
        );
      })}
      {places.cells.map((cell) =>
        fits(cell) ? (
          <Swatch
            key={placeId(cell)}
            cell={cell}
            question={answer.asked.question}
            place={boxOf(plan, cell.key)}
            shade={shading.byPlace.get(placeId(cell))}
            axis={metric?.axis ?? [0, 1]}
          />
        ) : (
          <rect key={placeId(cell)} className="unfit" {...boxOf(plan, cell.key)} />
        ),
      )}
    </>
  );
});

/** Places the search has not come to yet. */
function StillSearching({
  plan,
  places,
}: {
  readonly plan: MapPlan;
  readonly places: PlacesAround;
}) {
  const reached = Math.max(0, ...places.cells.map((cell) => cell.key.span));
  const waiting = plan.spans.filter((span) => span > reached);
  return (
    <>
      {waiting.flatMap((span) =>
        plan.rows.map((notes) => {
          const box = boxOf(plan, { span, notes });
          return <rect key={`${span}/${notes}`} className="awaited" {...box} />;
        }),
      )}
    </>
  );
}

function EmptyFrame({ place }: { readonly place: Box }) {
  return (
    <rect
      className="frame frame-empty"
      x={place.x - 1}
      y={place.y - 1}
      width={place.width + 2}
      height={place.height + 2}
    />
  );
}

/** The textbook voicings: hexagons at the corner of their place, dashed at another player count. */
export const MapReferences = memo(function MapReferences(props: {
  readonly plan: MapPlan;
  readonly references: readonly PlacedReference[];
  readonly players: number;
}) {
  const { plan, references, players } = props;
  const shown = references.filter(({ point }) => plan.rows.includes(point.report.cell.notes));
  return (
    <g aria-hidden="true">
      {shown.map(({ point, order }) => {
        const { cell } = point.report;
        const box = boxOf(plan, cell);
        return (
          <g key={point.letter} data-letter={point.letter} className="reference">
            <Hexagon
              x={box.x + box.width - 16 * order}
              y={box.y + box.height}
              letter={point.letter}
              isFaint={cell.players !== players}
            />
          </g>
        );
      })}
    </g>
  );
});
