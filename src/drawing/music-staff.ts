import {
  Accidental,
  Formatter,
  Metrics,
  Stave,
  StaveNote,
  Voice,
  VoiceMode,
  type Modifier,
  type RenderContext,
} from "vexflow/core";
import type { AccidentalSign, Staff, StaffNote } from "../notation/index.ts";
import { signColumns } from "./sign-columns.ts";
import type { StaffTheme } from "./staff-theme.ts";

/** Distance of two staff lines in drawing units. */
export const STAFF_SPACE = 10;
/** Width of a whole note's head. */
export const HEAD_WIDTH = 17;
/** Room the clef takes from the left end of the staff. */
const CLEF_ROOM = 43;
/** Room kept for accidentals, so that the heads stay where they are while notes change. */
const SIGN_ROOM = 30;
const AFTER_HEADS = 10;
/** From a head to the sign before it; VexFlow adds 2. */
const SIGN_HEAD_GAP = 2;
const SIGN_GAP = 2;

const SIGN_CODES: Readonly<Record<AccidentalSign, string>> = {
  none: "",
  natural: "n",
  flat: "b",
  sharp: "#",
  "double-flat": "bb",
  "double-sharp": "##",
};

/** A staff's notes, made but not yet placed. */
export interface PreparedStaff {
  readonly staff: Staff;
  readonly stave: Stave;
  /** Absent when nobody sounds on this staff. */
  readonly chord?: StaveNote;
  /** How far the accidentals reach to the left of the heads. */
  readonly signWidth: number;
}

/** Horizontal measures shared by staves that stand above each other. */
export interface StaffColumns {
  /** From the left end of the staff to the left edge of the heads in column 0. */
  readonly headX: number;
  readonly staffWidth: number;
}

function keyOf({ spelled }: StaffNote): string {
  return `${spelled.letter.toLowerCase()}/${spelled.octave}`;
}

function chordOf(staff: Staff, theme: StaffTheme): StaveNote {
  const chord = new StaveNote({ keys: staff.notes.map(keyOf), duration: "w", clef: staff.clef });
  staff.notes.forEach(({ sign }, index) => {
    if (sign !== "none") chord.addModifier(new Accidental(SIGN_CODES[sign]), index);
  });
  chord.setLedgerLineStyle({ strokeStyle: theme.ink, lineWidth: 1.4 });
  return chord;
}

/** Moves each head to its column; VexFlow knows two columns, displaced or not. */
function placeHeads(staff: Staff, chord: StaveNote): void {
  chord.noteHeads.forEach((head, index) => {
    const column = staff.notes[index]?.column ?? 0;
    const own = head.isDisplaced() ? 1 : 0;
    head.setXShift((column - own) * HEAD_WIDTH);
  });
}

/** Moves each accidental to its column and tells how far they reach. */
function placeSigns(staff: Staff, chord: StaveNote): number {
  const columns = signColumns(staff.notes);
  const signs = chord.getModifiersByType(Accidental.CATEGORY);
  const columnOf = (sign: Modifier): number => columns[sign.checkIndex()] ?? 0;
  let reach = 0;
  for (let column = 0; column <= Math.max(-1, ...signs.map(columnOf)); column++) {
    const own = signs.filter((sign) => columnOf(sign) === column);
    const start = reach + (column === 0 ? SIGN_HEAD_GAP : SIGN_GAP);
    for (const sign of own) sign.setXShift(start);
    reach = start + Math.max(...own.map((sign) => sign.getWidth()));
  }
  return reach;
}

/**
 * Makes a staff with its clef and notes; place it with setX and setY before drawing.
 * @param staff - what stands on it
 * @param theme - colours
 * @returns the parts, formatted so that their widths are known
 */
export function prepareStaff(staff: Staff, theme: StaffTheme): PreparedStaff {
  const stave = new Stave(0, 0, 100, {
    spaceAboveStaffLn: 0,
    leftBar: false,
    rightBar: false,
  });
  stave.setStyle({ strokeStyle: theme.line, fillStyle: theme.line, lineWidth: 1 });
  stave.addClef(staff.clef);
  for (const modifier of stave.getModifiers())
    modifier.setStyle({ strokeStyle: theme.ink, fillStyle: theme.ink });
  if (staff.notes.length === 0) return { staff, stave, signWidth: 0 };
  const chord = chordOf(staff, theme).setStave(stave);
  const voice = new Voice({ numBeats: 4, beatValue: 4 }).setMode(VoiceMode.SOFT);
  voice.addTickables([chord]);
  new Formatter().joinVoices([voice]).format([voice], 0);
  placeHeads(staff, chord);
  return { staff, stave, chord, signWidth: placeSigns(staff, chord) };
}

/**
 * Horizontal measures that suit every staff of a group.
 * @param staves - staves that stand above each other
 * @returns where heads stand and how wide the staves are
 */
export function staffColumns(staves: readonly PreparedStaff[]): StaffColumns {
  const signs = staves.map(({ signWidth }) => signWidth);
  const columns = staves.flatMap(({ staff }) => staff.notes.map((note) => note.column));
  const headX = CLEF_ROOM + Math.max(SIGN_ROOM, ...signs);
  const headsWidth = HEAD_WIDTH * (1 + Math.max(0, ...columns));
  return { headX, staffWidth: headX + headsWidth + AFTER_HEADS };
}

/** A head as drawn: its group, so that attributes can be added, and its middle. */
export interface DrawnHead {
  readonly staffId: string;
  readonly note: StaffNote;
  readonly group: SVGElement | undefined;
  readonly x: number;
  readonly y: number;
}

/**
 * Draws one staff.
 * @param context - VexFlow's drawing context for SVG
 * @param prepared - from prepareStaff
 * @param place - left end and top line, in drawing units
 * @param columns - shared measures
 * @param theme - colours
 * @returns the heads low to high
 */
export function drawMusicStaff(
  context: RenderContext,
  { staff, stave, chord }: PreparedStaff,
  place: { readonly x: number; readonly y: number },
  columns: StaffColumns,
  theme: StaffTheme,
): readonly DrawnHead[] {
  stave.setX(place.x).setY(place.y);
  stave.setWidth(columns.staffWidth).setContext(context).drawWithStyle();
  if (!chord) return [];
  const padding = Metrics.get("Stave.padding");
  chord.setStave(stave).setContext(context);
  const headX = place.x + columns.headX;
  chord.checkTickContext().setX(headX - stave.getNoteStartX() - padding);
  const group = context.openGroup("chord") as SVGElement;
  chord.setStyle({ fillStyle: theme.ink, strokeStyle: theme.ink }).drawWithStyle();
  context.closeGroup();
  const heads = [...group.querySelectorAll<SVGElement>(".vf-notehead")];
  return staff.notes.map((note, index) => ({
    staffId: staff.id,
    note,
    group: heads[index],
    x: headX + HEAD_WIDTH * (note.column + 0.5),
    y: place.y + STAFF_SPACE * (4 - note.step / 2),
  }));
}
