import { namesBySection, type StaffNote } from "../notation/index.ts";
import type { MeasureText } from "./measure-text.ts";
import { MARK_SIZE, sectionMark } from "./section-mark.ts";
import type { StaffTheme } from "./staff-theme.ts";
import { svgElement } from "./svg-element.ts";
import type { SectionId } from "../notation/index.ts";

const MARK_GAP = 3;
const ITEM_GAP = 10;

/** One section's names on one line of a label. */
interface LabelItem {
  readonly section: SectionId;
  readonly text: string;
  readonly width: number;
}

/** Lines of a label; each is a row of section marks with names. */
export type LabelLines = readonly (readonly LabelItem[])[];

/** A name list that is wider than the room is cut, each part with its own mark. */
function itemsOf(note: StaffNote, measure: MeasureText, room: number): readonly LabelItem[] {
  return namesBySection(note.players).flatMap(({ section, names }) => {
    const text = names.join("; ");
    const whole = MARK_SIZE + MARK_GAP + measure(text);
    const parts = whole <= room ? [text] : names;
    return parts.map((part) => ({
      section,
      text: part,
      width: MARK_SIZE + MARK_GAP + measure(part),
    }));
  });
}

/**
 * Breaks the players of a note into lines.
 * @param note - the note
 * @param measure - width of a text
 * @param room - width there is
 * @returns lines of marks and names; sections stay whole where they fit
 */
export function labelLines(note: StaffNote, measure: MeasureText, room: number): LabelLines {
  const lines: LabelItem[][] = [];
  let used = Infinity;
  for (const item of itemsOf(note, measure, room)) {
    const isNewLine = used + ITEM_GAP + item.width > room;
    if (isNewLine) lines.push([item]);
    else lines.at(-1)?.push(item);
    used = isNewLine ? item.width : used + ITEM_GAP + item.width;
  }
  return lines;
}

/**
 * Draws the players of a note.
 * @param lines - from labelLines
 * @param place - left edge, and middle of the block
 * @param look - line height, font size, colours
 * @returns marks and texts
 */
export function drawLabelLines(
  lines: LabelLines,
  place: { readonly x: number; readonly y: number },
  look: { readonly lineHeight: number; readonly fontSize: number; readonly theme: StaffTheme },
): readonly SVGElement[] {
  const { lineHeight, fontSize, theme } = look;
  const top = place.y - ((lines.length - 1) * lineHeight) / 2;
  return lines.flatMap((line, row) => {
    const y = top + row * lineHeight;
    let x = place.x;
    return line.flatMap(({ section, text, width }) => {
      const textX = x + MARK_SIZE + MARK_GAP;
      const parts = [
        sectionMark(section, x, y, theme),
        svgElement(
          "text",
          { x: textX, y: y + fontSize * 0.35, "font-size": fontSize, fill: theme.softInk },
          text,
        ),
      ];
      x += width + ITEM_GAP;
      return parts;
    });
  });
}
