import {
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  type KeyboardEvent,
  type ReactNode,
  type RefObject,
} from "react";
import { useMedia, useSize } from "../parts/use-size.ts";
import { usePage } from "../store.ts";
import type { Answer, InView } from "../state/page-state.ts";
import { deskSizes, mapPlan, rowWindow, scrollFor, touchSizes, type MapPlan } from "./map-plan.ts";
import { FilterRow } from "./filter-row.tsx";
import { EmptyPlaceWords, EmptyMapWords } from "./empty-words.tsx";
import { NotesAxis } from "./map-axes.tsx";
import { LayerChoice } from "./layer-choice.tsx";
import { legendPlan } from "./legend-plan.ts";
import { MapLegend } from "./map-legend.tsx";
import { MapTable } from "./map-table.tsx";
import { MapView, placeText } from "./map-view.tsx";
import { PlayersRow } from "./players-row.tsx";
import { zoomStep, zoomedPlan } from "./map-zoom.ts";
import { ProgressOrRamp } from "./search-progress.tsx";
import { SectionsPick } from "./sections-pick.tsx";
import { ShadePick } from "./shade-pick.tsx";
import { UnwrittenWalk } from "./unwritten-walk.tsx";
import { ZoomButtons } from "./zoom-buttons.tsx";

const smallScreen = "(max-width: 767px)";

/** The map of textures with its controls. */
export function MapColumn() {
  const answer = usePage((state) => state.answer);
  const view = usePage((state) => state.view);
  const hovered = usePage((state) => state.hovered);
  const [isTable, setTable] = useState(false);
  const [isWhole, setWhole] = useState(false);
  const isTouch = useMedia(smallScreen);
  const key = hovered ?? view?.report.cell;
  return (
    <section className="map" aria-labelledby="map-title">
      <div className="row map-head">
        <h2 id="map-title">Map</h2>
        <p className="map-place">{key === undefined ? "" : placeText(key, isTouch)}</p>
        {isTouch && !isTable && (
          <button
            type="button"
            className="link push"
            aria-pressed={isWhole}
            onClick={() => setWhole(!isWhole)}
          >
            {isWhole ? "Part of the map" : "Whole map"}
          </button>
        )}
        <button
          type="button"
          className={isTouch ? "link" : "link push"}
          aria-pressed={isTable}
          onClick={() => setTable(!isTable)}
        >
          {isTable ? "As a map" : "As a table"}
        </button>
      </div>
      <div className="row map-layer">
        <LayerChoice />
        <SectionsPick />
        <ShadePick />
      </div>
      <FilterRow />
      <ProgressOrRamp />
      <p id="map-keys" className="unseen">
        Arrow keys walk to narrower, wider, more and fewer notes; page up and page down change the
        players; Enter sounds the place; shift and an arrow step onto empty places, which say why
        they are empty; plus and minus draw the map larger and smaller, 0 whole.
      </p>
      {answer !== null &&
        view !== null &&
        (isTable ? <MapTable /> : <MapLattice isWhole={isWhole} />)}
      <EmptyMapWords />
      <EmptyPlaceWords />
      <PlayersRow />
      <UnwrittenWalk />
    </section>
  );
}

/** Rows in the window onto the map on a small screen. */
const windowRows = 5;

/** The lattice in the room at hand, with its legend in the empty corner or below. */
function MapLattice({ isWhole }: { readonly isWhole: boolean }) {
  const answer = usePage((state) => state.answer);
  const view = usePage((state) => state.view);
  const isTouch = useMedia(smallScreen);
  const [ref, size] = useSize<HTMLDivElement>({ width: 460, height: 400 });
  const row = view?.report.cell.notes ?? 0;
  const [zoom, setZoom] = useState(1);
  const beyond = usePage((state) => placeBeyond(state.answer, state.view));
  const shown = useMemo(
    () => (answer === null ? null : shownRows(answer, isTouch && !isWhole ? row : null)),
    [answer, isTouch, isWhole, row],
  );
  const plan = useMemo(() => {
    const cells = shown?.map.cells ?? [];
    const rows = cells.map((cell) => cell.key.notes);
    // A textbook voicing may lie outside every texture: then it gets a column of its own.
    const placed = (shown?.references ?? []).map((point) => point.report.cell);
    const inRows = placed.filter((key) => rows.includes(key.notes));
    const spans = [...cells.map((cell) => cell.key), ...inRows].map((key) => key.span);
    // A voicing of the user's own may lie beyond every texture: the map reaches so far.
    const [span, notes] = beyond.split(" ").map(Number);
    return mapPlan(
      span === undefined || span < 0 ? spans : [...spans, span],
      notes === undefined || notes < 0 ? rows : [...rows, notes],
      {
        width: size.width,
        ...(isTouch ? touchSizes : deskSizes),
      },
    );
  }, [shown, size.width, isTouch, beyond]);
  if (shown === null || view === null || shown.map.cells.length === 0) return null;
  const { players, notes, span } = view.report.cell;
  const points = shown.references.filter((point) => point.report.cell.players === players);
  // A map that scrolls sideways would carry its corner out of view.
  const onScreen = zoomedPlan(plan, zoom);
  const isScrolling = onScreen.width > size.width;
  const corner = isTouch || isScrolling ? null : legendPlan(shown.map.cells, plan, points);
  return (
    <div className="lattice-room">
      <NotesAxis plan={onScreen} notes={notes} />
      <LatticeScroll
        holder={ref}
        plan={onScreen}
        span={span}
        zoom={zoom}
        onZoom={(by) => setZoom(zoomStep(zoom, by))}
      >
        <MapView answer={shown} view={view} plan={plan} zoom={zoom} />
        {corner !== null && <MapLegend points={points} corner={corner} />}
      </LatticeScroll>
      {!isTouch && <ZoomButtons zoom={zoom} onZoom={setZoom} />}
      {corner === null && <MapLegend points={points} corner={null} />}
    </div>
  );
}

/**
 * Span and notes of the voicing in view where they lie beyond every texture, −1 where they do not;
 * as text, so that the map is laid out again only when they change.
 */
function placeBeyond(answer: Answer | null, view: InView | null): string {
  if (answer === null || view === null || view.report.cell.players === 0) return "-1 -1";
  const { span, notes } = view.report.cell;
  const spans = answer.map.cells.map((cell) => cell.key.span);
  const rows = answer.map.cells.map((cell) => cell.key.notes);
  const isOut = (value: number, all: readonly number[]) =>
    value < Math.min(...all) || value > Math.max(...all);
  return `${isOut(span, spans) ? span : -1} ${isOut(notes, rows) ? notes : -1}`;
}

/** The whole answer, or the part of its map around a row. */
function shownRows(answer: Answer, row: number | null): Answer {
  if (row === null) return answer;
  const rows = answer.map.cells.map((cell) => cell.key.notes);
  const [low, high] = rowWindow(rows, row, windowRows);
  const cells = answer.map.cells.filter(({ key }) => key.notes >= low && key.notes <= high);
  return { ...answer, map: { ...answer.map, cells } };
}

const zoomKeys: Readonly<Record<string, -1 | 0 | 1>> = { "+": 1, "=": 1, "-": -1, "0": 0 };

/** The wheel with Ctrl, which is also what pinching a touch pad sends. */
function useWheelZoom(element: RefObject<HTMLElement | null>, onZoom: (by: -1 | 1) => void): void {
  useEffect(() => {
    const turned = (event: WheelEvent) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      if (event.deltaY !== 0) onZoom(event.deltaY < 0 ? 1 : -1);
    };
    const { current } = element;
    // React's own wheel listeners cannot keep the browser from zooming the whole page.
    current?.addEventListener("wheel", turned, { passive: false });
    return () => current?.removeEventListener("wheel", turned);
  }, [element, onZoom]);
}

/** Scrolls sideways when there are many spans; keeps the place in view inside. */
function LatticeScroll(props: {
  readonly plan: MapPlan;
  readonly span: number;
  readonly zoom: number;
  readonly onZoom: (by: -1 | 0 | 1) => void;
  readonly holder: RefObject<HTMLDivElement | null>;
  readonly children: ReactNode;
}) {
  const { plan, span, zoom, onZoom, holder, children } = props;
  const scroll = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = scroll.current;
    if (element === null) return;
    const to = scrollFor(plan, span, element.scrollLeft, element.clientWidth);
    if (to !== element.scrollLeft) element.scrollLeft = to;
    if (zoom > 1) element.querySelector(".frame")?.scrollIntoView({ block: "nearest" });
  }, [plan, span, zoom]);
  useWheelZoom(scroll, onZoom);
  const keyed = (event: KeyboardEvent) => {
    const by = zoomKeys[event.key];
    if (by === undefined || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    onZoom(by);
  };
  return (
    <div className="lattice-scroll" ref={scroll} onKeyDown={keyed}>
      <div ref={holder}>{children}</div>
    </div>
  );
}
