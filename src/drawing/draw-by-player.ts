import { StaveConnector } from "vexflow/core";
import type { StaffLayout } from "../notation/index.ts";
import type { Brush } from "./brush.ts";
import { symbolText } from "./symbol-text.ts";
import type { DrawnNote, DrawnParts } from "./drawing-types.ts";
import { musicGroup } from "./music-group.ts";
import {
  drawMusicStaff,
  prepareStaff,
  staffColumns,
  type DrawnHead,
  type StaffColumns,
} from "./music-staff.ts";
import { drawnNote, noteTags, tagHead } from "./note-tags.ts";
import {
  bySection,
  placePlayerStaves,
  PLAYER_SCALE,
  PLAYER_STAFF_HEIGHT,
  type PlacedStaff,
} from "./place-player-staves.ts";
import { MARK_SIZE, sectionMark } from "./section-mark.ts";
import { svgElement } from "./svg-element.ts";

/** From the left edge of a column to its staff: mark, name, bracket. */
const STAFF_START = 64;
const DEGREE_ROOM = 28;
const SYMBOL_SIZE = 14;
const TITLE_SIZE = 20;
const TITLE_ROOM = 30;
/** Brackets reach beyond the last staff. */
const MARGIN = 14;

/**
 * Draws one staff a player, bracketed by section: sections side by side where the width allows,
 * under each other otherwise.
 * @param layout - a layout of view "by-player"
 * @param brush - width, labels, colours
 * @returns the parts, their height, the notes' places
 */
export function drawByPlayer(layout: StaffLayout, brush: Brush): DrawnParts {
  const { theme, width } = brush;
  const hasSymbols = layout.pitch === "written";
  const prepared = bySection(layout.staves).map((group) =>
    group.map((staff) => prepareStaff(staff, theme)),
  );
  const columns = staffColumns(prepared.flat());
  const top = hasSymbols ? 0 : TITLE_ROOM;
  const placed = placePlayerStaves(prepared, { width, top, hasSymbols });
  const parts = placed.groups.map((group) => drawGroup(group, columns, brush));
  const title = symbolText(layout.chordSymbol, { x: 0, y: TITLE_ROOM - 8 }, TITLE_SIZE, brush);
  return {
    children: [...(hasSymbols ? [] : [title]), ...parts.flatMap((part) => part.children)],
    height: Math.ceil(placed.bottom + MARGIN),
    notes: parts.flatMap((part) => part.notes),
  };
}

function drawGroup(
  group: readonly PlacedStaff[],
  columns: StaffColumns,
  brush: Brush,
): { readonly children: readonly SVGElement[]; readonly notes: readonly DrawnNote[] } {
  const { theme } = brush;
  const heads: DrawnHead[] = [];
  const music = musicGroup(theme, PLAYER_SCALE, (context) => {
    for (const { prepared, x, y } of group) {
      const place = { x: (x + STAFF_START) / PLAYER_SCALE, y: y / PLAYER_SCALE };
      heads.push(...drawMusicStaff(context, prepared, place, columns, theme));
    }
    const first = group[0]?.prepared.stave;
    const last = group.at(-1)?.prepared.stave;
    if (!first || !last) return;
    for (const type of ["bracket", "singleLeft"] as const)
      new StaveConnector(first, last).setType(type).setContext(context).draw();
  });
  heads.forEach(tagHead);
  const notes = heads.map((head) =>
    drawnNote({ ...head, x: head.x * PLAYER_SCALE, y: head.y * PLAYER_SCALE }),
  );
  return { children: [music, ...group.map((placed) => staffLabel(placed, columns, brush))], notes };
}

function staffLabel(placed: PlacedStaff, columns: StaffColumns, brush: Brush): SVGElement {
  const { prepared, x, y, symbolY } = placed;
  const { theme, textSize } = brush;
  const { player, chordSymbol, notes } = prepared.staff;
  const middle = y + PLAYER_STAFF_HEIGHT / 2;
  const baseline = middle + textSize * 0.35;
  const staffX = x + STAFF_START;
  const look = { y: baseline, "font-size": textSize, fill: theme.ink };
  const parts: SVGElement[] = [];
  if (player)
    parts.push(
      sectionMark(player.section, x, middle, theme),
      svgElement("text", { x: x + MARK_SIZE + 4, ...look }, player.abbreviation),
    );
  if (symbolY !== undefined) {
    const place = { x: staffX + columns.headX * PLAYER_SCALE, y: symbolY };
    parts.push(symbolText(chordSymbol, place, SYMBOL_SIZE, brush));
  }
  const [note] = notes;
  if (note && brush.labels !== "none") {
    const degreeX = staffX + columns.staffWidth * PLAYER_SCALE + DEGREE_ROOM;
    const degreeLook = { class: "staff-degree", "text-anchor": "end", "font-weight": 700 };
    const noteY = y + PLAYER_STAFF_HEIGHT * (1 - note.step / 8);
    const place = { x: degreeX, ...look, y: noteY + textSize * 0.35 };
    parts.push(svgElement("text", { ...place, ...degreeLook }, note.degreeText));
  }
  return svgElement("g", { class: "staff-label", ...(note && noteTags(note)) }, parts);
}
