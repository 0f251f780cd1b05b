import { useMemo, type KeyboardEvent, type PointerEvent } from "react";
import type { AtlasCell, CellKey, Question } from "../../voicing/index.ts";
import { showReference } from "../actions/edit.ts";
import { hearView } from "../actions/hear.ts";
import { placeSpoken } from "../actions/place-spoken.ts";
import { goTo, goToEmpty, sayView, walk, walkPlayers } from "../actions/walk.ts";
import type { Answer, InView } from "../state/page-state.ts";
import { cellAt, isSamePlace, type Direction } from "../state/places.ts";
import { page, usePage } from "../store.ts";
import { counted } from "../words/counts.ts";
import { spanText } from "../words/interval-words.ts";
import type { MapGap, MapPlan } from "./map-plan.ts";
import { MapAxes, mapRoom } from "./map-axes.tsx";
import { MapMarks, MapReferences } from "./map-marks.tsx";
import { placesAround, referencePlaces, tickedSpans } from "./map-places.ts";

const arrows: Readonly<Record<string, Direction>> = {
  ArrowLeft: "narrower",
  ArrowRight: "wider",
  ArrowUp: "more",
  ArrowDown: "fewer",
};

/** The lattice of textures. One tab stop; arrows walk, page keys change the players, Enter sounds. */
export function MapView(props: {
  readonly answer: Answer;
  readonly view: InView;
  readonly plan: MapPlan;
  /** How much larger the map is drawn than it is laid out. */
  readonly zoom: number;
}) {
  const { answer, view, plan, zoom } = props;
  const emptyPlace = usePage((state) => state.emptyPlace);
  const shownMetric = usePage((state) => state.shading.metricId);
  const here = emptyPlace?.key ?? view.report.cell;
  const { players } = here;
  const places = useMemo(
    () => placesAround(answer.map.cells, players),
    [answer.map.cells, players],
  );
  const references = useMemo(() => referencePlaces(answer.references), [answer.references]);
  const width = plan.width + 12;
  const { head, foot } = mapRoom;
  const height = head + plan.height + foot;
  const keyed = (event: KeyboardEvent) => keyOnMap(event, answer, view, plan);
  return (
    <svg
      className="lattice"
      viewBox={`0 ${-head} ${width} ${height}`}
      width={width * zoom}
      height={height * zoom}
      role="application"
      aria-roledescription="map of textures"
      aria-label={`Map of textures. ${placeSpoken(view, answer, shownMetric)}`}
      aria-describedby="map-keys"
      tabIndex={0}
      data-testid="map"
      onKeyDown={keyed}
      onPointerMove={(event) => hover(placeUnder(event, plan, players, answer.asked.question))}
      onPointerLeave={() => hover(null)}
      onClick={(event) => press(event, answer, plan, players)}
    >
      <MapAxes plan={plan} here={here} answer={answer} />
      <MapMarks
        answer={answer}
        view={view}
        plan={plan}
        places={places}
        emptyKey={emptyPlace?.key ?? null}
      />
      <MapReferences plan={plan} references={references} players={players} />
    </svg>
  );
}

function keyOnMap(event: KeyboardEvent, answer: Answer, view: InView, plan: MapPlan): void {
  const direction = arrows[event.key];
  if (direction !== undefined && event.shiftKey) stepOne(direction, answer, view, plan);
  else if (direction !== undefined) walk(direction);
  else if (event.key === "PageUp") walkPlayers(1);
  else if (event.key === "PageDown") walkPlayers(-1);
  else if (event.key === "Enter") hearView();
  else if (event.key === " ") hearView("again");
  else return;
  event.preventDefault();
}

/** One row or column on, even onto an empty place, which then says why it is empty. */
function stepOne(direction: Direction, answer: Answer, view: InView, plan: MapPlan): void {
  const from = page.getState().emptyPlace?.key ?? view.report.cell;
  const sign = direction === "wider" || direction === "more" ? 1 : -1;
  const key =
    direction === "wider" || direction === "narrower"
      ? { ...from, span: nextOf(plan.spans, from.span, sign) }
      : { ...from, notes: nextOf([...plan.rows].reverse(), from.notes, sign) };
  visit(key, answer);
}

function nextOf(rising: readonly number[], from: number, sign: number): number {
  const beyond = rising.filter((each) => sign * (each - from) > 0);
  return (sign > 0 ? beyond[0] : beyond[beyond.length - 1]) ?? from;
}

function visit(key: CellKey, answer: Answer): void {
  if (cellAt(answer.map.cells, key) === undefined) return goToEmpty(key);
  goTo(key);
  sayView();
}

function hover(key: CellKey | null): void {
  const { hovered } = page.getState();
  if (hovered === key || (hovered !== null && key !== null && isSamePlace(hovered, key))) return;
  page.setState({ hovered: key });
}

/** The place under the pointer, whether it holds anything or not. */
function placeUnder(
  event: { clientX: number; clientY: number; currentTarget: SVGSVGElement },
  plan: MapPlan,
  players: number,
  question: Question,
): CellKey | null {
  const box = event.currentTarget.getBoundingClientRect();
  const scale = box.height / (mapRoom.head + plan.height + mapRoom.foot);
  const x = (event.clientX - box.left) / scale;
  const y = (event.clientY - box.top) / scale - mapRoom.head;
  const reach = plan.placeWidth + 2;
  const span = plan.spans.find((each) => x >= plan.xOf(each) - 2 && x < plan.xOf(each) + reach);
  const gap = plan.gaps.find((each) => x >= each.x && x < each.x + each.width);
  const notes = plan.rows.find((each) => {
    const top = plan.yOf(each);
    return y >= top - 2 && y < top + plan.placeHeight + 2;
  });
  if (notes === undefined) return null;
  if (span !== undefined) return { span, notes, players };
  return gap === undefined ? null : { span: gapSpan(gap, question), notes, players };
}

/** The span that a press on a gap means: the middle one of those with a ticked lowest note. */
function gapSpan(gap: MapGap, question: Question): number {
  const spans = tickedSpans(gap, question);
  return spans[Math.floor(spans.length / 2)] ?? Math.round((gap.from + gap.to) / 2);
}

function press(
  event: PointerEvent<SVGSVGElement> | React.MouseEvent<SVGSVGElement>,
  answer: Answer,
  plan: MapPlan,
  players: number,
): void {
  const letter = (event.target as Element).closest("[data-letter]")?.getAttribute("data-letter");
  const point = answer.references.find((reference) => reference.letter === letter);
  if (point !== undefined) {
    showReference(point);
    return hearView();
  }
  const key = placeUnder(event, plan, players, answer.asked.question);
  if (key === null) return;
  const cell = cellAt(answer.map.cells, key) ?? nearestCount(answer.map.cells, key);
  if (cell === undefined) return goToEmpty(key);
  goTo(cell.key);
  hearView();
}

/** The same span and notes with another number of players, the nearest. */
function nearestCount(cells: readonly AtlasCell[], key: CellKey): AtlasCell | undefined {
  return cells
    .filter((cell) => cell.key.span === key.span && cell.key.notes === key.notes)
    .sort(
      (a, b) => Math.abs(a.key.players - key.players) - Math.abs(b.key.players - key.players),
    )[0];
}

/** A place in a few words, for the map's head line. */
export function placeText(key: CellKey, isBrief: boolean): string {
  const notes = counted(key.notes, "note");
  if (isBrief) return `${spanText(key.span, "brief")}, ${notes}`;
  return `${spanText(key.span)}, ${notes}, ${counted(key.players, "player")}`;
}
