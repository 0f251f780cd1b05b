import { memo, useState, type PointerEvent } from "react";
import { quantity } from "../../../base/index.ts";
import type { Harmonised } from "../../../phrase/index.ts";
import type { Divisions, Melody } from "../../../theory/index.ts";
import { chordWithSigns } from "../../words/signs.ts";
import { entry } from "./entry-state.ts";
import { enterAt, moveTo, noteHere, setPitch } from "./entry-moves.ts";
import { StaffFrame } from "./staff-frame.tsx";
import { ledgersOf, StaffNotes } from "./staff-notes.tsx";
import { timeAt, xOf } from "./staff-plan.ts";
import type { PlannedItem, PlannedLine } from "./staff-plan-types.ts";
import { glyphs } from "./staff-signs.ts";
import { staff, stepsAtY, yOfSteps } from "./staff-sizes.ts";
import { pitchAtSteps, stepsOf } from "./staff-steps.ts";

/** Words below a note whose chord is not the song's own. */
const short: Readonly<Record<string, string>> = Object.freeze({
  chromatic: "chr",
  diatonic: "dia",
  parallel: "par",
  dominant: "dom",
  diminished: "dim",
});

interface LineProps {
  readonly line: PlannedLine;
  readonly melody: Melody;
  readonly width: number;
  readonly isLast: boolean;
  /** Of the melody's notes, by the note they are heard as. */
  readonly harmony: ReadonlyMap<string, Harmonised>;
  readonly held: ReadonlySet<string>;
  readonly chosen: ReadonlySet<string>;
  /** The cursor, divisions; null when it is on another line. */
  readonly cursor: number | null;
  readonly gridLength: number;
}

/** One line of the melody, to look at and to write on. */
export const StaffLine = memo(function StaffLine(props: LineProps) {
  const { line, melody, width, isLast, chosen } = props;
  const pointer = usePointer(props);
  return (
    <svg
      className="melody-line-drawing"
      width={width}
      height={staff.height}
      viewBox={`0 0 ${width} ${staff.height}`}
      aria-hidden="true"
      {...pointer.handlers}
    >
      <rect width={width} height={staff.height} fill="transparent" />
      <Cursor {...props} />
      <StaffFrame line={line} melody={melody} isLast={isLast} />
      <StaffNotes line={line} chosen={chosen} />
      <Chords line={line} melody={melody} />
      <NoteWords {...props} />
      {pointer.ghost !== null && <Ghost x={pointer.ghost.x} steps={pointer.ghost.steps} />}
    </svg>
  );
});

interface GhostPlace {
  readonly x: number;
  readonly steps: number;
}

function itemAt(line: PlannedLine, x: number, steps: number): PlannedItem | undefined {
  return line.items.find(
    (item) =>
      item.noteId !== undefined &&
      x > item.x - 5 &&
      x < item.x + 15 &&
      Math.abs(steps - item.steps) <= 2,
  );
}

/** The place of the grid a press lies on; null where a note sounds. */
function freeAt({ line, melody, gridLength }: LineProps, x: number): Divisions | null {
  const bar = line.bars.find((each) => x >= each.x && x < each.endX);
  if (bar === undefined) return null;
  const grid = Math.max(1, gridLength);
  const at = bar.from + Math.floor((timeAt(line, x + 5) - bar.from) / grid + 0.02) * grid;
  const isFree = at >= bar.from && at < bar.to && noteHere(melody, at) === undefined;
  return isFree ? quantity<Divisions>(at) : null;
}

/** What a press means: on a note it chooses and drags it, in a gap it writes one. */
function usePointer(props: LineProps) {
  const { line, melody } = props;
  const [ghost, setGhost] = useState<GhostPlace | null>(null);
  const [dragged, setDragged] = useState<PlannedItem | null>(null);
  const place = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    return { x: event.clientX - box.left, steps: stepsAtY(event.clientY - box.top) };
  };
  const over = (event: PointerEvent<SVGSVGElement>) => {
    const { x, steps } = place(event);
    if (dragged !== null) return setGhost({ x: dragged.x, steps });
    const at = itemAt(line, x, steps) === undefined ? freeAt(props, x) : null;
    const isOnStaff = steps > 20 && steps < 48;
    setGhost(
      at === null || !isOnStaff || event.pointerType === "touch"
        ? null
        : { x: xOf(line, at), steps },
    );
  };
  const down = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0) return;
    const { x, steps } = place(event);
    const item = itemAt(line, x, steps);
    if (item !== undefined) {
      moveTo(melody, item.from, false);
      setDragged(item);
      return event.currentTarget.setPointerCapture(event.pointerId);
    }
    if (steps >= 45) return beginChord(melody, timeAt(line, x));
    const at = freeAt(props, x);
    if (at !== null && steps > 20) enterAt(at, melody.division, steps);
    else moveTo(melody, noteStart(melody, timeAt(line, x)), false);
  };
  const up = (event: PointerEvent<SVGSVGElement>) => {
    const { steps } = place(event);
    if (dragged?.noteId !== undefined && steps !== dragged.steps)
      setPitch(dragged.noteId, pitchAtSteps(steps, melody.key));
    setDragged(null);
    setGhost(null);
  };
  const leave = () => {
    if (dragged === null) setGhost(null);
  };
  return {
    ghost,
    handlers: {
      onPointerMove: over,
      onPointerDown: down,
      onPointerUp: up,
      onPointerLeave: leave,
      onPointerCancel: () => {
        setDragged(null);
        setGhost(null);
      },
    },
  };
}

function noteStart(melody: Melody, at: number): number {
  return noteHere(melody, at)?.onset ?? at;
}

/** Opens the chord's field at the beat a press lies in. */
function beginChord(melody: Melody, at: number): void {
  const { division, pickup, changes } = melody;
  const beat = (4 * division) / melody.metre.beatType;
  const near = changes.find(({ onset }) => Math.abs(onset - at) < beat / 2);
  const grid = pickup + Math.round((at - pickup) / beat) * beat;
  const chordAt = Math.max(0, near?.onset ?? grid) / division;
  entry.setState({ at: chordAt, chordAt });
}

function Cursor({ line, melody, cursor, gridLength }: LineProps) {
  if (cursor === null) return null;
  const note = noteHere(melody, cursor);
  const x = xOf(line, cursor);
  if (note !== undefined) {
    const y = yOfSteps(stepsOf(note.pitch));
    return <rect className="staff-here" x={x - 12} y={y - 9} width={26} height={18} />;
  }
  const end = Math.min(line.endX, xOf(line, Math.min(line.to, cursor + gridLength)));
  const top = yOfSteps(40);
  return (
    <g>
      <rect className="staff-next" x={x - 3} y={top} width={Math.max(10, end - x)} height={48} />
      <line className="staff-cursor" x1={x - 3} x2={x - 3} y1={top} y2={top + 48} />
    </g>
  );
}

function Ghost({ x, steps }: GhostPlace) {
  return (
    <g className="ghost">
      {ledgersOf(steps).map((at) => (
        <line
          key={at}
          className="staff-line"
          x1={x - 3}
          x2={x + 13}
          y1={yOfSteps(at)}
          y2={yOfSteps(at)}
        />
      ))}
      <text className="music" x={x} y={yOfSteps(steps)}>
        {glyphs.headBlack}
      </text>
    </g>
  );
}

function Chords({ line, melody }: { readonly line: PlannedLine; readonly melody: Melody }) {
  const inside = melody.changes.filter(({ onset }) => onset >= line.from && onset < line.to);
  return inside.map(({ onset, text }) => (
    <text key={onset} className="loud melody-chord" x={xOf(line, onset) - 2} y={staff.chords}>
      {chordWithSigns(text)}
    </text>
  ));
}

/** How notes are harmonised, where not by the song's chord, and what is fixed. */
function NoteWords({ line, harmony, held }: LineProps) {
  const seen = new Set<string>();
  return line.items.map((item) => {
    if (item.noteId === undefined || seen.has(item.noteId)) return null;
    seen.add(item.noteId);
    const found = harmony.get(item.noteId);
    const isHeld = held.has(item.noteId);
    const line2 = found?.texture === "unison" ? "uni" : found?.texture === "octaves" ? "8ve" : "";
    const word = found?.technique === undefined ? line2 : (short[found.technique] ?? "");
    if (word === "" && !isHeld) return null;
    return (
      <g key={item.noteId}>
        <text className="note-word" x={item.x + 5} y={staff.words} textAnchor="middle">
          {word}
        </text>
        {isHeld && <path className="note-held" d={`M${item.x},${staff.words - 12}h10v-4h-10z`} />}
      </g>
    );
  });
}
