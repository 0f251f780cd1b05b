import { StaveConnector } from "vexflow/core";
import type { StaffLayout } from "../notation/index.ts";
import type { Brush } from "./brush.ts";
import { drawNoteLabels } from "./draw-note-labels.ts";
import type { DrawnParts } from "./drawing-types.ts";
import { musicGroup } from "./music-group.ts";
import {
  drawMusicStaff,
  prepareStaff,
  staffColumns,
  STAFF_SPACE,
  type DrawnHead,
} from "./music-staff.ts";
import { drawnNote, tagHead } from "./note-tags.ts";
import { staffExtent } from "./staff-extent.ts";
import { symbolText } from "./symbol-text.ts";

const BRACE_ROOM = 20;
const STAFF_HEIGHT = 4 * STAFF_SPACE;
/** Least distance from the treble staff's bottom line to the bass staff's top line. */
const STAFF_GAP = 6 * STAFF_SPACE;
const BETWEEN_NOTES = 6;
const SYMBOL_SIZE = 20;
const SYMBOL_ROOM = 30;
const MARGIN = 6;
/** Room kept for labels before the music gets smaller, CSS pixels. */
const LABEL_ROOM = { players: 150, degrees: 44, none: 2 } as const;
const LEAST_SCALE = 0.6;
/** From this width on the music is drawn larger. */
const ROOMY = 480;
const NO_EXTENT = { above: 0, below: 0 };

/**
 * Draws a grand staff: chord symbol, brace, both staves, one chord, labels to the right.
 * @param layout - a layout of view "grand"
 * @param brush - width, labels, colours
 * @returns the parts, their height, the notes' places
 */
export function drawGrand(layout: StaffLayout, brush: Brush): DrawnParts {
  const { theme, width } = brush;
  const prepared = layout.staves.map((staff) => prepareStaff(staff, theme));
  const columns = staffColumns(prepared);
  const staffEnd = BRACE_ROOM + columns.staffWidth;
  const most = width < ROOMY ? 1 : 1.2;
  const fitting = (width - LABEL_ROOM[brush.labels]) / staffEnd;
  const scale = Math.max(LEAST_SCALE, Math.min(most, fitting));
  const tops = staffTops(layout, SYMBOL_ROOM / scale);
  const heads: DrawnHead[] = [];
  const music = musicGroup(theme, scale, (context) => {
    for (const each of prepared) {
      const y = each.staff.clef === "treble" ? tops.treble : tops.bass;
      heads.push(...drawMusicStaff(context, each, { x: BRACE_ROOM, y }, columns, theme));
    }
    const [treble, bass] = prepared;
    if (!treble || !bass) return;
    for (const type of ["brace", "singleLeft"] as const)
      new StaveConnector(treble.stave, bass.stave).setType(type).setContext(context).draw();
  });
  heads.forEach(tagHead);
  const scaled = heads.map((head) => ({ ...head, x: head.x * scale, y: head.y * scale }));
  const symbolPlace = { x: (BRACE_ROOM + columns.headX) * scale, y: SYMBOL_ROOM - 8 };
  const symbol = symbolText(layout.chordSymbol, symbolPlace, SYMBOL_SIZE, brush);
  const labels = drawNoteLabels(scaled, { brush, staffEnd: staffEnd * scale, top: SYMBOL_ROOM });
  return {
    children: [symbol, music, ...labels.children],
    height: Math.ceil(Math.max(tops.bottom * scale, labels.bottom) + MARGIN),
    notes: scaled.map(drawnNote),
  };
}

/** Top lines of both staves and the lowest point, drawing units. */
function staffTops(layout: StaffLayout, top: number) {
  const [trebleExtent = NO_EXTENT, bassExtent = NO_EXTENT] = layout.staves.map(staffExtent);
  const treble = top + trebleExtent.above;
  const gap = Math.max(STAFF_GAP, trebleExtent.below + BETWEEN_NOTES + bassExtent.above);
  const bass = treble + STAFF_HEIGHT + gap;
  return { treble, bass, bottom: bass + STAFF_HEIGHT + bassExtent.below };
}
