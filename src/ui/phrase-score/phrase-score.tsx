import { useEffect, useMemo, useRef, useState, type KeyboardEvent } from "react";
import type { DrawnSystem, SystemBars } from "../../drawing/index.ts";
import { layoutPhrase, type PhraseLayout, type StaffPitch } from "../../notation/index.ts";
import { placeText } from "../../theory/index.ts";
import { announce } from "../actions/announce.ts";
import { fileNameOf, handOver } from "../actions/hand-over.ts";
import { Choice } from "../parts/choice.tsx";
import { PickList } from "../parts/pick-list.tsx";
import { useMedia, useSize } from "../parts/use-size.ts";
import { goTo } from "../phrase/phrase-actions.ts";
import { phraseStore, usePhrase, type PhraseInView } from "../phrase/phrase-store.ts";
import { useDrawing, type Drawing } from "../voicing/use-drawing.ts";
import { onCursor } from "./phrase-sound-state.ts";
import "./phrase-score.css";

type ScoreShape = "full" | "condensed" | "line";

const shapes: readonly { value: ScoreShape; text: string; meaning: string }[] = [
  { value: "full", text: "Full score", meaning: "A staff for each player." },
  { value: "condensed", text: "Condensed", meaning: "A staff for each section, concert pitch." },
  { value: "line", text: "One line", meaning: "What one player reads." },
];

/** Room for names, and size of the music: a line alone is larger. */
const looks = Object.freeze({
  full: { scale: 0.62, nameRoom: 72 },
  condensed: { scale: 0.7, nameRoom: 66 },
  line: { scale: 0.85, nameRoom: 62 },
});

/** The phrase on paper: full score, a staff a section, or one player's line. */
export function PhraseScore() {
  const view = usePhrase((state) => state.view);
  const drawing = useDrawing();
  return view === null ? null : (
    <section className="phrase-part phrase-score" aria-labelledby="score-head">
      <ScoreBody view={view} drawing={drawing} />
    </section>
  );
}

function ScoreBody(props: {
  readonly view: PhraseInView;
  readonly drawing: Drawing | string | null;
}) {
  const { view, drawing } = props;
  const isNarrow = useMedia("(max-width: 767px)");
  const [wanted, setShape] = useState<ScoreShape | null>(null);
  const shape = wanted ?? (isNarrow ? "line" : "full");
  const [pitch, setPitch] = useState<StaffPitch>("concert");
  const [chosen, setPlayer] = useState<string | null>(null);
  const atPlayer = usePhrase((state) => state.place?.playerId ?? null);
  const { players } = view.phrase;
  const playerId = chosen ?? atPlayer ?? players[0]?.id ?? "";
  const layout = useMemo(
    () =>
      layoutPhrase(view.phrase, view.performance, {
        pitch: shape === "condensed" ? "concert" : pitch,
        isCondensed: shape === "condensed",
        ...(shape === "line" ? { playerIds: [playerId] } : {}),
      }),
    [view, shape, pitch, playerId],
  );
  return (
    <>
      <div className="row phrase-part-head">
        <h2 id="score-head">Score</h2>
        <Choice label="Staves" options={shapes} value={shape} onChange={setShape} />
        {shape !== "condensed" && (
          <Choice
            label="Pitch of the score"
            options={[
              { value: "concert", text: "Concert", meaning: "Every note as it sounds." },
              { value: "written", text: "Written", meaning: "Every note as its player reads it." },
            ]}
            value={pitch}
            onChange={setPitch}
          />
        )}
        {shape === "line" && (
          <PickList
            label="Player"
            rows={players.map(({ id, name }) => ({ id, text: name }))}
            picked={playerId}
            onPick={setPlayer}
          />
        )}
        {drawing !== null && typeof drawing !== "string" && (
          <SaveButtons drawing={drawing} layout={layout} scale={looks[shape].scale} />
        )}
      </div>
      {typeof drawing === "string" && <p className="quiet">{drawing}</p>}
      {drawing !== null && typeof drawing !== "string" && (
        <Systems drawing={drawing} layout={layout} look={looks[shape]} view={view} />
      )}
    </>
  );
}

/** The score as it is in view, for use outside the page. */
function SaveButtons(props: {
  readonly drawing: Drawing;
  readonly layout: PhraseLayout;
  readonly scale: number;
}) {
  const { drawing, layout, scale } = props;
  return (
    <span className="row push">
      {(["svg", "png"] as const).map((kind) => (
        <button
          key={kind}
          type="button"
          className="link"
          onClick={() => void savePicture(drawing, layout, scale, kind)}
        >
          Save as {kind.toUpperCase()}
        </button>
      ))}
    </span>
  );
}

/** Hands the score in view over as a picture; says what became of it. */
async function savePicture(
  drawing: Drawing,
  layout: PhraseLayout,
  scale: number,
  kind: "svg" | "png",
): Promise<void> {
  const who = layout.staves.length === 1 ? (layout.staves[0]?.name ?? "") : "score";
  const name = fileNameOf([layout.title, who], kind);
  try {
    const figure = await drawing.drawPhraseFigure(layout, scale);
    const png = kind === "png" ? await figure.png(2) : undefined;
    const type = kind === "png" ? "image/png" : "image/svg+xml";
    handOver(png ?? figure.svg, name, type);
    announce(`Saved as ${name}.`);
  } catch {
    announce("The picture could not be drawn: reload the page, then save it again.");
  }
}

function Systems(props: {
  readonly drawing: Drawing;
  readonly layout: PhraseLayout;
  readonly look: { readonly scale: number; readonly nameRoom: number };
  readonly view: PhraseInView;
}) {
  const { drawing, layout, look, view } = props;
  const [room, { width }] = useSize<HTMLDivElement>({ width: 0, height: 0 });
  const systems = useMemo(
    () => (width < 200 ? [] : drawing.systemsOf(layout, (width - look.nameRoom - 2) / look.scale)),
    [drawing, layout, look, width],
  );
  return (
    <div
      className="score-room"
      ref={room}
      role="group"
      aria-label="Score: left and right go through the moments"
      tabIndex={0}
      data-testid="score"
      onKeyDown={(event) => keyed(event, view)}
    >
      {systems.map((bars) => (
        <SystemView
          key={`${bars.from} ${bars.to}`}
          drawing={drawing}
          layout={layout}
          bars={bars}
          options={{ ...look, width }}
        />
      ))}
    </div>
  );
}

function keyed(event: KeyboardEvent, { phrase }: PhraseInView): void {
  const by = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
  if (by === 0) return;
  event.preventDefault();
  const { place } = phraseStore.getState();
  const at = phrase.moments.findIndex(({ moment }) => moment.id === place?.momentId);
  const next = at < 0 ? 0 : Math.min(phrase.moments.length - 1, Math.max(0, at + by));
  const moment = phrase.moments[next]?.moment;
  if (moment === undefined) return;
  goTo({ momentId: moment.id, playerId: place?.playerId ?? null });
  const where = placeText(phrase.melody, moment.onset);
  announce(`${where.charAt(0).toUpperCase()}${where.slice(1)}.`);
}

/** A height to keep before a line is drawn, CSS pixels. */
function heightAhead(layout: PhraseLayout, scale: number): number {
  return Math.round((70 + 92 * layout.staves.length) * scale);
}

/** One line of the score, drawn once it comes near the window. */
function SystemView(props: {
  readonly drawing: Drawing;
  readonly layout: PhraseLayout;
  readonly bars: SystemBars;
  readonly options: { readonly scale: number; readonly nameRoom: number; readonly width: number };
}) {
  const { drawing, layout, bars, options } = props;
  const { scale, nameRoom, width } = options;
  const holder = useRef<HTMLDivElement>(null);
  const paper = useRef<HTMLDivElement>(null);
  const [drawn, setDrawn] = useState<DrawnSystem | null>(null);
  useEffect(() => {
    const element = holder.current;
    if (element === null) return;
    const watcher = new IntersectionObserver(
      (entries) => {
        if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
        watcher.disconnect();
        const made = drawing.drawPhraseSystem(layout, bars, { scale, nameRoom, width });
        paper.current?.replaceChildren(made.svg);
        setDrawn(made);
      },
      { rootMargin: "500px 0px" },
    );
    watcher.observe(element);
    return () => watcher.disconnect();
  }, [drawing, layout, bars, scale, nameRoom, width]);
  return (
    <div
      className="score-system"
      ref={holder}
      style={{ minHeight: drawn?.height ?? heightAhead(layout, scale) }}
      onClick={(event) => {
        if (drawn !== null) pressed(event.clientX, event.clientY, drawn, holder.current);
      }}
    >
      <div ref={paper} />
      {drawn !== null && <Here drawn={drawn} />}
      {drawn !== null && <Cursor drawn={drawn} />}
    </div>
  );
}

/** Goes to the note nearest to the pointer. */
function pressed(x: number, y: number, drawn: DrawnSystem, holder: HTMLElement | null): void {
  const box = holder?.getBoundingClientRect();
  if (box === undefined) return;
  const [left, top] = [x - box.left, y - box.top];
  const away = (point: DrawnSystem["points"][number]) =>
    Math.hypot(point.x - left, (point.y - top) * 1.5);
  const [nearest] = [...drawn.points].sort((a, b) => away(a) - away(b));
  if (nearest === undefined || away(nearest) > 80) return;
  goTo({ momentId: nearest.momentId, playerId: nearest.playerIds[0] ?? null });
}

/** Where the user is: the moment as a band, the player's note in a frame. */
function Here({ drawn }: { readonly drawn: DrawnSystem }) {
  const place = usePhrase((state) => state.place);
  const own = drawn.points.filter(({ momentId }) => momentId === place?.momentId);
  const [first] = own;
  if (first === undefined) return null;
  const note = own.find(({ playerIds }) => playerIds.includes(place?.playerId ?? ""));
  return (
    <>
      <i className="score-here" style={{ left: first.x - 10, height: drawn.height - 20 }} />
      {note !== undefined && (
        <i className="score-note" style={{ left: note.x - 10, top: note.y - 9 }} />
      )}
    </>
  );
}

/** Where the music stands: a line that is moved and nothing else. */
function Cursor({ drawn }: { readonly drawn: DrawnSystem }) {
  const line = useRef<HTMLElement>(null);
  const stops = useMemo(() => stopsOf(drawn), [drawn]);
  useEffect(
    () =>
      onCursor((at) => {
        if (line.current === null) return;
        const x = at === null ? null : xAt(stops, at);
        line.current.style.visibility = x === null ? "hidden" : "visible";
        if (x !== null) line.current.style.transform = `translateX(${x.toFixed(1)}px)`;
      }),
    [stops],
  );
  return <i className="score-cursor" ref={line} style={{ height: drawn.height - 20 }} />;
}

interface Stop {
  readonly at: number;
  readonly x: number;
}

/** Places that the cursor passes: every onset, the bar lines between. */
function stopsOf({ points, bars }: DrawnSystem): readonly Stop[] {
  const byOnset = new Map<number, number>();
  for (const { onset, x } of points) byOnset.set(onset, Math.min(x, byOnset.get(onset) ?? x));
  for (const { onset, x } of bars) if (!byOnset.has(onset)) byOnset.set(onset, x);
  const stops = [...byOnset].map(([at, x]) => ({ at, x })).sort((a, b) => a.at - b.at);
  const last = bars.at(-1);
  return last ? [...stops, { at: last.until, x: last.end }] : stops;
}

function xAt(stops: readonly Stop[], at: number): number | null {
  const next = stops.findIndex((stop) => stop.at > at);
  const [before, after] = [stops[next - 1], stops[next]];
  if (!before || !after) return null;
  return before.x + ((after.x - before.x) * (at - before.at)) / (after.at - before.at);
}
