import type { AtlasCell } from "../../voicing/index.ts";
import { wrapWords } from "../words/wrap-words.ts";
import type { MapPlan } from "./map-plan.ts";

/** Sizes of the legend in the map's corner, CSS pixels; the style sheet sets the same. */
export const legendSizes = {
  left: 12,
  line: 16,
  between: 3,
  letter: 6.2,
  sign: 24,
  heading: 140,
} as const;

/** One entry of the legend: its label broken into lines. */
export interface LegendEntry {
  readonly letter: string;
  readonly lines: readonly string[];
}

/** The legend in the corner, or null where it does not fit. */
export interface LegendPlan {
  readonly entries: readonly LegendEntry[];
}

/**
 * Fits the list of textbook voicings into the map's empty corner, narrow and many,
 * line by line, so that no line touches a place.
 * @param cells - all cells of the map, whatever their number of players
 * @param plan - where they lie
 * @param points - letters and labels
 * @returns labels broken to the room beside them; null where it does not fit
 */
export function legendPlan(
  cells: readonly AtlasCell[],
  plan: MapPlan,
  points: readonly { readonly letter: string; readonly label: string }[],
): LegendPlan | null {
  const { left, line, between, letter, sign, heading } = legendSizes;
  const free = (top: number, bottom: number) => freeWidth(cells, plan, top, bottom) - left;
  let y = 0;
  if (free(y, y + line) < heading) return null;
  y += line + between;
  const entries: LegendEntry[] = [];
  for (const point of points) {
    const room = free(y, y + 2 * line) - sign;
    if (room < letter * longestWord(point.label)) return null;
    const lines = wrapWords(point.label, Math.floor(room / letter));
    entries.push({ letter: point.letter, lines });
    y += lines.length * line + between;
  }
  return { entries };
}

function longestWord(text: string): number {
  return Math.max(...text.split(" ").map((word) => word.length));
}

/** Free width from the left edge of the map in a horizontal stretch. */
function freeWidth(
  cells: readonly AtlasCell[],
  plan: MapPlan,
  top: number,
  bottom: number,
): number {
  let width = plan.width;
  for (const { key } of cells) {
    const y = plan.yOf(key.notes);
    if (y < bottom && y + plan.placeHeight > top) width = Math.min(width, plan.xOf(key.span) - 6);
  }
  return width;
}
