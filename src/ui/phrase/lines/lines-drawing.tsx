import type { PointerEvent } from "react";
import type { PlayerPart } from "../../../phrase/index.ts";
import { barCount, barStart } from "../../../theory/index.ts";
import { useSize } from "../../parts/use-size.ts";
import { plainName } from "../../words/pitch-names.ts";
import { goTo } from "../phrase-actions.ts";
import { usePhrase, type PhraseInView } from "../phrase-store.ts";

const height = 264;
const pad = { side: 7, top: 14, bottom: 8 };

interface Scale {
  readonly x: (at: number) => number;
  readonly y: (midi: number) => number;
}

/** The ladder over time: each player a thread, thick where the player sounds. */
export function LinesDrawing({ view }: { readonly view: PhraseInView }) {
  const [room, { width }] = useSize<HTMLDivElement>({ width: 800, height });
  const place = usePhrase((state) => state.place);
  const { melody, moments } = view.phrase;
  const { parts } = view.performance;
  const pitches = parts.flatMap(({ notes }) => notes.map(({ sounding }) => sounding as number));
  const low = Math.min(...pitches) - 1;
  const high = Math.max(...pitches) + 1;
  const scale: Scale = {
    x: (at) => pad.side + (at / Math.max(1, melody.length)) * (width - 2 * pad.side),
    y: (midi) =>
      pad.top + ((high - midi) / Math.max(1, high - low)) * (height - pad.top - pad.bottom),
  };
  const here = moments.find(({ moment }) => moment.id === place?.momentId)?.moment;
  const pressed = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    goToNearest(parts, scale, event.clientX - box.left, event.clientY - box.top);
  };
  return (
    <div className="lines-row">
      <Octaves low={low} high={high} scale={scale} />
      <div className="lines-room" ref={room}>
        <svg
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-label={`Lines of ${parts.length} players over ${barCount(melody)} bars; each moment is told in words beside it`}
          onPointerDown={pressed}
        >
          <rect width={width} height={height} fill="transparent" />
          <Bars view={view} scale={scale} />
          {here !== undefined && (
            <rect
              className="lines-here"
              x={scale.x(here.onset)}
              width={Math.max(3, scale.x(here.onset + here.duration) - scale.x(here.onset))}
              y={0}
              height={height}
            />
          )}
          {parts.map((part, index) => (
            <Thread
              key={part.player.id}
              part={part}
              scale={scale}
              shift={((index % 4) - 1.5) * 0.9}
              isChosen={place?.playerId === part.player.id}
              isDim={typeof place?.playerId === "string" && place.playerId !== part.player.id}
            />
          ))}
        </svg>
      </div>
    </div>
  );
}

/** Goes to the player's note that lies nearest to a press. */
function goToNearest(parts: readonly PlayerPart[], scale: Scale, x: number, y: number): void {
  let best = 24;
  for (const { player, notes } of parts)
    for (const { onset, duration, sounding, momentId } of notes) {
      const aside = Math.max(scale.x(onset) - x, x - scale.x(onset + duration), 0);
      const away = aside + Math.abs(scale.y(sounding) - y);
      if (away >= best) continue;
      best = away;
      goTo({ momentId, playerId: player.id });
    }
}

function Octaves(props: { readonly low: number; readonly high: number; readonly scale: Scale }) {
  const { low, high, scale } = props;
  const notes = [36, 48, 60, 72, 84].filter((midi) => midi > low && midi < high);
  return (
    <svg className="lines-names" width="132" height={height} aria-hidden="true">
      {notes.map((midi) => (
        <text key={midi} x="126" y={scale.y(midi) + 4} textAnchor="end" className="bar-number">
          {plainName(midi)}
        </text>
      ))}
    </svg>
  );
}

function Bars({ view, scale }: { readonly view: PhraseInView; readonly scale: Scale }) {
  const { melody } = view.phrase;
  const bars = Array.from({ length: barCount(melody) }, (_, index) => index + 1);
  return (
    <>
      {[36, 48, 60, 72, 84].map((midi) => (
        <line
          key={midi}
          className="curve-bar"
          x1={0}
          x2={scale.x(melody.length)}
          y1={scale.y(midi)}
          y2={scale.y(midi)}
        />
      ))}
      {bars.map((bar) => (
        <g key={bar}>
          <line
            className="curve-bar"
            x1={scale.x(barStart(melody, bar))}
            x2={scale.x(barStart(melody, bar))}
            y1={0}
            y2={height}
          />
          <text className="bar-number" x={scale.x(barStart(melody, bar)) + 3} y={10}>
            {bar}
          </text>
        </g>
      ))}
    </>
  );
}

function Thread(props: {
  readonly part: PlayerPart;
  readonly scale: Scale;
  readonly shift: number;
  readonly isChosen: boolean;
  readonly isDim: boolean;
}) {
  const { part, scale, shift, isChosen, isDim } = props;
  const { notes, player } = part;
  const y = (midi: number) => scale.y(midi) + shift;
  const held = notes
    .map(
      ({ onset, duration, sounding }) =>
        `M${scale.x(onset) + 1},${y(sounding)}H${scale.x(onset + duration) - 1}`,
    )
    .join("");
  const moves = notes
    .flatMap((note, index) => {
      const next = notes[index + 1];
      if (next === undefined || next.onset > note.onset + note.duration) return [];
      return [
        `M${scale.x(note.onset + note.duration) - 1},${y(note.sounding)}L${scale.x(next.onset) + 1},${y(next.sounding)}`,
      ];
    })
    .join("");
  return (
    <g
      className={`thread-${player.section}`}
      data-chosen={isChosen}
      opacity={isDim ? 0.3 : undefined}
    >
      <path className="thread-move" d={moves} />
      <path className="thread-held" d={held} />
    </g>
  );
}
