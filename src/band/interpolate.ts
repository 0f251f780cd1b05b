import type { Ratio } from "../base/index.ts";

/**
 * Reads a table of points between its rows, straight from each to the next. Outside the rows the
 * first or last stretch goes on, or its value holds.
 * @param at - where to read, in the unit of the places
 * @param places - ascending places, two or more
 * @param values - one value a place
 * @param outside - "hold" keeps the end's value, "extend" goes on along the last stretch
 * @returns the value there
 * @example interpolate(1.5, [1, 2], [10, 20], "hold") // 15
 */
export function interpolate(
  at: Ratio,
  places: readonly Ratio[],
  values: readonly Ratio[],
  outside: "hold" | "extend",
): Ratio {
  const last = places.length - 1;
  let low = 0;
  while (low < last - 1 && at > (places[low + 1] ?? Infinity)) low += 1;
  const [x0 = 0, x1 = 1] = [places[low], places[low + 1]];
  const [y0 = 0, y1 = y0] = [values[low], values[low + 1]];
  const way = (at - x0) / (x1 - x0);
  const kept = outside === "hold" ? Math.min(1, Math.max(0, way)) : way;
  return y0 + kept * (y1 - y0);
}
