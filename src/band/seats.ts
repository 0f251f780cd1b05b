import type { Count } from "../base/index.ts";
import type { InstrumentId, SeatId } from "./band-types.ts";
import { seatTable, type SeatRow } from "./seat-table.ts";

/** Ids of all chairs, in the order of a line-up. */
export const seatIds: readonly SeatId[] = Object.freeze(seatTable.map((each) => each.id));

/**
 * Row of a chair.
 * @param id - chair id
 * @returns its ranges, costs and home
 * @throws RangeError when there is no such chair
 */
export function seatRow(id: SeatId): SeatRow {
  const found = seatTable.find((each) => each.id === id);
  if (!found) throw new RangeError(`seat must be one of the table's, got "${id}"`);
  return found;
}

/**
 * The chair whose row a player follows: the one of this instrument with the same number, or the
 * next lower one there is (a fifth trumpet follows the fourth).
 * @param instrument - instrument id
 * @param chair - 0 for the first chair
 * @returns its row
 */
export function seatFor(instrument: InstrumentId, chair: Count): SeatRow {
  const rows = seatTable.filter((each) => each.instrument === instrument);
  const found = rows.filter((each) => each.chair <= chair).at(-1) ?? rows[0];
  if (!found) throw new RangeError(`no seat for instrument "${instrument}"`);
  return found;
}
