import {
  BarlineType,
  Formatter,
  Stave,
  StaveConnector,
  StaveTie,
  type RenderContext,
} from "vexflow/core";
import type { PhraseLayout, PhraseStaff } from "../notation/index.ts";
import { musicGroup } from "./music-group.ts";
import { makeBar, type MadeBar, type MadeValue } from "./phrase-notes.ts";
import { barWidth, staffTops, type SystemBars } from "./phrase-system-plan.ts";
import { phraseWords } from "./phrase-words.ts";
import { variableTheme, type StaffTheme } from "./staff-theme.ts";
import { svgElement } from "./svg-element.ts";

/** How a line of a phrase is drawn. */
export interface DrawPhraseOptions {
  /** Width of the drawing in CSS pixels; the height follows from it. */
  readonly width: number;
  /** Size of the music; 1 gives staves 40 pixels high. */
  readonly scale: number;
  /** Room for the names left of the staves, CSS pixels. */
  readonly nameRoom: number;
  /** Colours; CSS variables unless given. */
  readonly theme?: StaffTheme;
}

/** Where a note or a bar stands, CSS pixels from the drawing's left and top edge. */
export interface PhrasePoint {
  readonly onset: number;
  readonly momentId: string;
  readonly staffId: string;
  readonly playerIds: readonly string[];
  readonly x: number;
  readonly y: number;
}

/** A bar of the line: its time, divisions, and its edges, CSS pixels. */
export interface DrawnBar {
  readonly onset: number;
  readonly until: number;
  readonly x: number;
  readonly end: number;
}

/** A finished line of the score. */
export interface DrawnSystem {
  readonly svg: SVGSVGElement;
  readonly height: number;
  readonly points: readonly PhrasePoint[];
  /** Left and right edge of every bar, CSS pixels. */
  readonly bars: readonly DrawnBar[];
}

/** A staff in one bar of the line. */
interface Placed {
  readonly staff: PhraseStaff;
  readonly stave: Stave;
  readonly made: MadeBar;
}

/** Room above the first staff for chord symbols and the head of the score, drawing units. */
const TOP_ROOM = 52;
const FIRST_TOP_ROOM = 84;

/**
 * Draws one line of a phrase: names, clefs, keys, notes, chord symbols, dynamics. Call loadMusicFonts
 * first.
 * @param layout - from layoutPhrase
 * @param system - which bars
 * @param options - width, size, colours
 * @returns the picture and where everything stands in it
 * @throws RangeError when the width is not a number above 0
 */
export function drawPhraseSystem(
  layout: PhraseLayout,
  system: SystemBars,
  options: DrawPhraseOptions,
): DrawnSystem {
  const { width, scale, nameRoom, theme = variableTheme } = options;
  if (!(width > nameRoom)) throw new RangeError(`width must be above ${nameRoom}, got ${width}`);
  const room = { left: nameRoom / scale, width: (width - nameRoom - 2) / scale };
  const { tops, height } = staffTops(layout, system, system.from === 0 ? FIRST_TOP_ROOM : TOP_ROOM);
  const columns: (readonly Placed[])[] = [];
  const music = musicGroup(theme, scale, (context) => {
    columns.push(...placedColumns(layout, system, { ...room, tops, theme }));
    for (const column of columns) drawColumn(column, context, theme);
    drawTies(columns, context);
    drawConnectors(columns, context);
  });
  const words = phraseWords(layout, system, columns, { scale, theme, tops });
  const size = { width, height: Math.ceil(height * scale) };
  const svg = svgElement(
    "svg",
    {
      class: "phrase-system",
      role: "img",
      "aria-label": labelOf(layout, system),
      viewBox: `0 0 ${size.width} ${size.height}`,
      ...size,
    },
    [music, ...words],
  );
  return {
    svg,
    height: size.height,
    points: pointsOf(columns, scale),
    bars: columns.flatMap(([first], index) => {
      const bar = layout.bars[system.from + index];
      if (!first || !bar) return [];
      const { stave } = first;
      return [
        {
          onset: bar.onset,
          until: bar.end,
          x: stave.getNoteStartX() * scale,
          end: (stave.getX() + stave.getWidth()) * scale,
        },
      ];
    }),
  };
}

function labelOf({ bars, staves, pitch }: PhraseLayout, { from, to }: SystemBars): string {
  const [first, last] = [bars[from]?.number ?? 0, bars[to - 1]?.number ?? 0];
  const name = (bar: number): string => (bar === 0 ? "pickup" : `bar ${bar}`);
  const where = first === last ? name(first) : `${name(first)} to ${name(last)}`;
  const who = staves.length === 1 ? (staves[0]?.name ?? "") : `${staves.length} staves`;
  return `Score, ${where}, ${who}, ${pitch === "concert" ? "concert pitch" : "as written"}`;
}

function placedColumns(
  layout: PhraseLayout,
  system: SystemBars,
  area: {
    readonly left: number;
    readonly width: number;
    readonly tops: readonly number[];
    readonly theme: StaffTheme;
  },
): readonly (readonly Placed[])[] {
  const indices = Array.from({ length: system.to - system.from }, (_, n) => system.from + n);
  const least = indices.map((index) => barWidth(layout, index));
  const isLast = system.to === layout.bars.length;
  const wanted = least.reduce((sum, own) => sum + own, 0);
  const head = headRoom(layout, system);
  // The last line is not torn apart when it is short.
  const spread = Math.min((area.width - head) / wanted, isLast ? 1.6 : Infinity);
  let x = area.left;
  return indices.map((index, column) => {
    const own = (least[column] ?? 0) * spread + (column === 0 ? head : 0);
    const placed = layout.staves.map((staff, row): Placed => {
      const stave = staveOf(staff, layout, index, column === 0, {
        x,
        y: area.tops[row] ?? 0,
        width: own,
        theme: area.theme,
      });
      const bar = staff.bars[index] ?? { values: [], symbols: [] };
      return { staff, stave, made: makeBar(staff, bar, stave, area.theme) };
    });
    x += own;
    formatColumn(placed, x);
    return placed;
  });
}

/** Clef, the longest key signature, and the metre at the beginning. */
function headRoom({ staves }: PhraseLayout, { from }: SystemBars): number {
  const signs = Math.max(0, ...staves.map(({ fifths }) => Math.abs(fifths)));
  return 42 + 10 * signs + (from === 0 ? 30 : 0);
}

const KEYS = ["Gb", "Db", "Ab", "Eb", "Bb", "F", "C", "G", "D", "A", "E", "B", "F#"];

function staveOf(
  { clef, fifths }: PhraseStaff,
  layout: PhraseLayout,
  bar: number,
  isFirst: boolean,
  place: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly theme: StaffTheme;
  },
): Stave {
  const stave = new Stave(place.x, place.y, place.width, { spaceAboveStaffLn: 0, leftBar: false });
  const { line, ink } = place.theme;
  stave.setStyle({ strokeStyle: line, fillStyle: line, lineWidth: 1 });
  if (isFirst) {
    stave.addClef(clef);
    if (fifths !== 0) stave.addKeySignature(KEYS[fifths + 6] ?? "C");
    const { beats, beatType } = layout.metre;
    if (bar === 0) stave.addTimeSignature(`${beats}/${beatType}`);
  }
  if (bar === layout.bars.length - 1) stave.setEndBarType(BarlineType.END);
  for (const modifier of stave.getModifiers())
    modifier.setStyle({ strokeStyle: ink, fillStyle: ink });
  return stave;
}

/** All staves of a bar begin their notes at one place, and what sounds together stands together. */
function formatColumn(column: readonly Placed[], end: number): void {
  const start = Math.max(...column.map(({ stave }) => stave.getNoteStartX()));
  for (const { stave } of column) stave.setNoteStartX(start);
  const formatter = new Formatter();
  for (const { made } of column) formatter.joinVoices([made.voice]);
  formatter.format(
    column.map(({ made }) => made.voice),
    Math.max(20, end - start - 22),
  );
}

function drawColumn(column: readonly Placed[], context: RenderContext, theme: StaffTheme): void {
  const look = { fillStyle: theme.ink, strokeStyle: theme.ink };
  for (const { stave, made } of column) {
    stave.setContext(context).drawWithStyle();
    for (const { note } of made.values) note.setStyle(look);
    made.voice.draw(context, stave);
    for (const beam of made.beams) beam.setStyle(look).setContext(context).draw();
    for (const tuplet of made.tuplets) tuplet.setStyle(look).setContext(context).draw();
  }
}

/** Ties from note to note; one that comes from the line before, or runs on, is cut at the edge. */
function drawTies(columns: readonly (readonly Placed[])[], context: RenderContext): void {
  const rows = columns[0]?.length ?? 0;
  for (let row = 0; row < rows; row++) {
    const line = columns.flatMap((column) => column[row]?.made.values ?? []);
    line.forEach(({ value, note }, index) => {
      const next = line[index + 1];
      value.heads.forEach(({ isTiedOn, isTiedFrom, spelled }, head) => {
        if (isTiedFrom && index === 0) tie(context, null, note, head, head);
        if (!isTiedOn) return;
        tie(context, note, next?.note ?? null, head, next ? headOf(next, spelled) : head);
      });
    });
  }
}

function headOf({ value }: MadeValue, spelled: MadeValue["value"]["heads"][number]["spelled"]) {
  const same = value.heads.findIndex(
    (head) => head.spelled.letter === spelled.letter && head.spelled.octave === spelled.octave,
  );
  return Math.max(0, same);
}

function tie(
  context: RenderContext,
  firstNote: MadeValue["note"] | null,
  lastNote: MadeValue["note"] | null,
  from: number,
  to: number,
): void {
  new StaveTie({ firstNote, lastNote, firstIndexes: [from], lastIndexes: [to] })
    .setContext(context)
    .draw();
}

/** A line down the left, brackets and bar lines through each section. */
function drawConnectors(columns: readonly (readonly Placed[])[], context: RenderContext): void {
  const [first = []] = columns;
  const [top, bottom] = [first[0], first.at(-1)];
  if (!top || !bottom || first.length < 2) return;
  const join = (from: Placed, to: Placed, type: "singleLeft" | "singleRight" | "bracket") =>
    new StaveConnector(from.stave, to.stave).setType(type).setContext(context).draw();
  join(top, bottom, "singleLeft");
  for (const section of new Set(first.map(({ staff }) => staff.section))) {
    columns.forEach((column, index) => {
      const own = column.filter(({ staff }) => staff.section === section);
      const [upper, lower] = [own[0], own.at(-1)];
      if (!upper || !lower) return;
      if (index === 0) join(upper, lower, "bracket");
      join(upper, lower, "singleRight");
    });
  }
}

function pointsOf(columns: readonly (readonly Placed[])[], scale: number): readonly PhrasePoint[] {
  return columns.flatMap((column) =>
    column.flatMap(({ staff, made }) =>
      made.values.flatMap(({ value, note }): PhrasePoint[] =>
        value.heads.map(({ playerIds }, head) => ({
          onset: value.onset,
          momentId: value.momentId ?? "",
          staffId: staff.id,
          playerIds,
          x: (note.getAbsoluteX() + 6) * scale,
          y: (note.getYs()[head] ?? 0) * scale,
        })),
      ),
    ),
  );
}
