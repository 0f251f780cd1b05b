import type { Count, Ratio } from "../base/index.ts";

/**
 * Reads a table between its rows by straight lines; outside it the end rows hold.
 * @param rows - rows with the argument in column 0, ascending
 * @param at - argument, in the unit of column 0
 * @param column - column to read
 * @returns value in the unit of that column
 */
export function interpolate(
  rows: readonly (readonly Ratio[])[],
  at: Ratio,
  column: Count = 1,
): Ratio {
  const next = rows.findIndex((row) => row[0]! >= at);
  if (next === -1) return rows[rows.length - 1]![column]!;
  const upper = rows[next]!;
  if (next === 0) return upper[column]!;
  const lower = rows[next - 1]!;
  const share = (at - lower[0]!) / (upper[0]! - lower[0]!);
  return lower[column]! + share * (upper[column]! - lower[column]!);
}
