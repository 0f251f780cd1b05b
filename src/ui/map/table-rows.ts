import type { AtlasCell } from "../../voicing/index.ts";
import type { Shade } from "../search-messages.ts";
import { placeId } from "../state/place-id.ts";

/** What the table can be sorted by. */
export type SortBy = "span" | "notes" | "players" | "measure";

/** One texture as a row. */
export interface TableRow {
  readonly cell: AtlasCell;
  readonly shade: Shade | undefined;
}

/**
 * The map's cells as sorted rows; equal ones by span, notes, players.
 * @param cells - all cells
 * @param shades - the chosen measure by place
 * @param by - what to sort by
 * @param isFalling - greatest first
 * @returns the rows; textures without the measure come last
 */
export function tableRows(
  cells: readonly AtlasCell[],
  shades: ReadonlyMap<string, Shade>,
  by: SortBy,
  isFalling: boolean,
): readonly TableRow[] {
  const rows = cells.map((cell) => ({ cell, shade: shades.get(placeId(cell)) }));
  const sign = isFalling ? -1 : 1;
  const valueOf = ({ cell, shade }: TableRow) =>
    by === "measure" ? (shade?.value ?? null) : cell.key[by];
  return rows.sort((a, b) => {
    const [left, right] = [valueOf(a), valueOf(b)];
    if (left !== right) {
      if (left === null) return 1;
      if (right === null) return -1;
      return sign * (left - right);
    }
    const [one, other] = [a.cell.key, b.cell.key];
    return one.span - other.span || one.notes - other.notes || one.players - other.players;
  });
}
