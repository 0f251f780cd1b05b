import type { Brush } from "./brush.ts";
import type { DrawnHead } from "./music-staff.ts";
import { noteTags } from "./note-tags.ts";
import { drawLabelLines, labelLines, type LabelLines } from "./player-labels.ts";
import { spreadLabels } from "./spread-labels.ts";
import { svgElement } from "./svg-element.ts";

const LINE_HEIGHT = 16;
const LABEL_GAP = 2;
/** From the end of the staff: leader, degree (right-aligned), names. */
const LEADER_START = 3;
const LEADER_END = 14;
const DEGREE_END = 42;
const NAMES_START = 50;

/** Where labels go. */
export interface LabelPlace {
  readonly brush: Brush;
  /** Right end of the staff lines. */
  readonly staffEnd: number;
  /** Nothing is drawn above this. */
  readonly top: number;
}

/** Labels drawn, and where the lowest one ends. */
export interface DrawnLabels {
  readonly children: readonly SVGElement[];
  readonly bottom: number;
}

/**
 * Writes each note's degree and players to the right of the staff, level with the note where there
 * is room, otherwise led to it by a thin line.
 * @param heads - drawn heads, any order, CSS pixels
 * @param place - where the labels go
 * @returns groups tagged like the notes
 */
export function drawNoteLabels(heads: readonly DrawnHead[], place: LabelPlace): DrawnLabels {
  const { brush, staffEnd, top } = place;
  if (brush.labels === "none") return { children: [], bottom: 0 };
  const room = brush.width - staffEnd - NAMES_START;
  const rows = [...heads]
    .sort((a, b) => a.y - b.y)
    .map((head) => {
      const lines = brush.labels === "players" ? labelLines(head.note, brush.measure, room) : [];
      return { head, lines, y: head.y, height: LINE_HEIGHT * Math.max(1, lines.length) };
    });
  const middles = spreadLabels(rows, LABEL_GAP, top);
  const children = rows.map(({ head, lines }, index) =>
    noteLabel(head, lines, { brush, staffEnd, y: middles[index] ?? head.y }),
  );
  const last = rows.at(-1);
  return { children, bottom: (middles.at(-1) ?? 0) + (last?.height ?? 0) / 2 };
}

function noteLabel(
  head: DrawnHead,
  lines: LabelLines,
  { brush, staffEnd, y }: { readonly brush: Brush; readonly staffEnd: number; readonly y: number },
): SVGElement {
  const { theme, textSize } = brush;
  const leader = svgElement("path", {
    class: "staff-leader",
    d: `M${staffEnd + LEADER_START} ${head.y}L${staffEnd + LEADER_END} ${y}`,
    fill: "none",
    stroke: theme.line,
  });
  const degree = svgElement(
    "text",
    {
      class: "staff-degree",
      x: staffEnd + DEGREE_END,
      y: y + textSize * 0.35,
      "text-anchor": "end",
      "font-size": textSize,
      "font-weight": 700,
      fill: theme.ink,
    },
    head.note.degreeText,
  );
  const names = drawLabelLines(
    lines,
    { x: staffEnd + NAMES_START, y },
    { lineHeight: LINE_HEIGHT, fontSize: textSize, theme },
  );
  return svgElement("g", { class: "staff-label", ...noteTags(head.note) }, [
    leader,
    degree,
    ...names,
  ]);
}
