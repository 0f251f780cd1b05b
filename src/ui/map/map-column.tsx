import { useLayoutEffect, useMemo, useRef, useState, type ReactNode, type RefObject } from "react";
import { useMedia, useSize } from "../parts/use-size.ts";
import { usePage } from "../store.ts";
import { deskSizes, mapPlan, scrollFor, touchSizes, type MapPlan } from "./map-plan.ts";
import { EmptyPlaceWords, EmptyMapWords } from "./empty-words.tsx";
import { NotesAxis } from "./map-axes.tsx";
import { LayerChoice } from "./layer-choice.tsx";
import { legendPlan } from "./legend-plan.ts";
import { MapLegend } from "./map-legend.tsx";
import { MapTable } from "./map-table.tsx";
import { MapView, placeText } from "./map-view.tsx";
import { PlayersRow } from "./players-row.tsx";
import { Ramp } from "./ramp.tsx";
import { SearchProgress } from "./search-progress.tsx";
import { ShadePick } from "./shade-pick.tsx";

/** The map of textures with its controls. */
export function MapColumn() {
  const answer = usePage((state) => state.answer);
  const view = usePage((state) => state.view);
  const hovered = usePage((state) => state.hovered);
  const [isTable, setTable] = useState(false);
  const key = hovered ?? view?.report.cell;
  return (
    <section className="map" aria-labelledby="map-title">
      <div className="row map-head">
        <h2 id="map-title">Map</h2>
        <p className="map-place">{key === undefined ? "" : placeText(key)}</p>
        <button
          type="button"
          className="link push"
          aria-pressed={isTable}
          onClick={() => setTable(!isTable)}
        >
          {isTable ? "As a map" : "As a table"}
        </button>
      </div>
      <div className="row map-layer">
        <LayerChoice />
        <ShadePick />
      </div>
      <Ramp />
      <p id="map-keys" className="unseen">
        Arrow keys walk to narrower, wider, more and fewer notes; page up and page down change the
        players; Enter sounds the place; shift and an arrow step onto empty places, which say why
        they are empty.
      </p>
      <SearchProgress />
      {answer !== null && view !== null && (isTable ? <MapTable /> : <MapLattice />)}
      <EmptyMapWords />
      <EmptyPlaceWords />
      <PlayersRow />
    </section>
  );
}

/** The lattice in the room at hand, with its legend in the empty corner or below. */
function MapLattice() {
  const answer = usePage((state) => state.answer);
  const view = usePage((state) => state.view);
  const isTouch = useMedia("(max-width: 767px)");
  const [ref, size] = useSize<HTMLDivElement>({ width: 460, height: 400 });
  const plan = useMemo(() => {
    const keys = (answer?.map.cells ?? []).map((cell) => cell.key);
    const rows = keys.map((key) => key.notes);
    // A textbook voicing may lie outside every texture: then it gets a column of its own.
    const placed = (answer?.references ?? []).map((point) => point.report.cell);
    const inRows = placed.filter((key) => rows.includes(key.notes));
    return mapPlan(
      [...keys, ...inRows].map((key) => key.span),
      rows,
      { width: size.width, ...(isTouch ? touchSizes : deskSizes) },
    );
  }, [answer, size.width, isTouch]);
  if (answer === null || view === null || answer.map.cells.length === 0) return null;
  const { players } = view.report.cell;
  const points = answer.references.filter((point) => point.report.cell.players === players);
  const corner = isTouch ? null : legendPlan(answer.map.cells, plan, points);
  return (
    <div className="lattice-room">
      <NotesAxis plan={plan} notes={view.report.cell.notes} />
      <LatticeScroll holder={ref} plan={plan} span={view.report.cell.span}>
        <MapView answer={answer} view={view} plan={plan} />
        {corner !== null && <MapLegend points={points} corner={corner} />}
      </LatticeScroll>
      {corner === null && <MapLegend points={points} corner={null} />}
    </div>
  );
}

/** Scrolls sideways when there are many spans; keeps the place in view inside. */
function LatticeScroll(props: {
  readonly plan: MapPlan;
  readonly span: number;
  readonly holder: RefObject<HTMLDivElement | null>;
  readonly children: ReactNode;
}) {
  const { plan, span, holder, children } = props;
  const scroll = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = scroll.current;
    if (element === null) return;
    const to = scrollFor(plan, span, element.scrollLeft, element.clientWidth);
    if (to !== element.scrollLeft) element.scrollLeft = to;
  }, [plan, span]);
  return (
    <div className="lattice-scroll" ref={scroll}>
      <div ref={holder}>{children}</div>
    </div>
  );
}
