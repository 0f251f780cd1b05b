import type { AtlasCell } from "../../voicing/index.ts";

/**
 * Names a cell among the cells of one map.
 * @param cell - the cell
 * @returns e.g. "33/6/13"; lines have a name of their own beside harmony at the same place
 */
export function placeId(cell: Pick<AtlasCell, "key" | "family">): string {
  const { span, notes, players } = cell.key;
  return `${span}/${notes}/${players}${cell.family === "line" ? "/line" : ""}`;
}
