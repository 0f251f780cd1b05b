import type { AtlasCell, CellKey } from "../../voicing/index.ts";

/** Ways to walk the map. */
export type Direction = "narrower" | "wider" | "more" | "fewer";

/**
 * Whether two keys name the same texture.
 * @param a - one key
 * @param b - another
 * @returns true when span, notes and players agree
 */
export function isSamePlace(a: CellKey, b: CellKey): boolean {
  return a.span === b.span && a.notes === b.notes && a.players === b.players;
}

/**
 * The cell at a place; where harmony and a line share the place, harmony.
 * @param cells - the map's cells
 * @param key - the place
 * @returns the cell, or nothing
 */
export function cellAt(cells: readonly AtlasCell[], key: CellKey): AtlasCell | undefined {
  const there = cells.filter((cell) => isSamePlace(cell.key, key));
  return there.find((cell) => cell.family === "harmony") ?? there[0];
}

/**
 * The cell nearest to a wanted place: same players first, then span, then notes.
 * @param cells - the map's cells
 * @param wanted - the place the user was at
 * @returns the nearest cell, or nothing on an empty map
 */
export function nearestCell(cells: readonly AtlasCell[], wanted: CellKey): AtlasCell | undefined {
  let best: AtlasCell | undefined;
  let least = Infinity;
  for (const cell of cells) {
    const away =
      1000 * Math.abs(cell.key.players - wanted.players) +
      2 * Math.abs(cell.key.span - wanted.span) +
      3 * Math.abs(cell.key.notes - wanted.notes) +
      (cell.family === "line" ? 1 : 0);
    if (away < least) {
      least = away;
      best = cell;
    }
  }
  return best;
}

/**
 * The next place in a direction, among the places with as many players. Stays in the row or
 * column where it can; leaves it for the nearest place where it ends.
 * @param cells - the map's cells
 * @param from - where the user is
 * @param direction - where to go
 * @returns the next cell, or nothing at the edge
 */
export function neighbourCell(
  cells: readonly AtlasCell[],
  from: CellKey,
  direction: Direction,
): AtlasCell | undefined {
  const isAcross = direction === "narrower" || direction === "wider";
  const sign = direction === "wider" || direction === "more" ? 1 : -1;
  const along = (key: CellKey) => sign * (isAcross ? key.span - from.span : key.notes - from.notes);
  const aside = (key: CellKey) =>
    Math.abs(isAcross ? key.notes - from.notes : key.span - from.span);
  let best: AtlasCell | undefined;
  let least = Infinity;
  for (const cell of cells) {
    if (cell.key.players !== from.players || along(cell.key) <= 0) continue;
    // Leaving the row costs more than any way along it.
    const away = along(cell.key) + 100 * aside(cell.key);
    if (away < least || (away === least && cell.family === "harmony")) {
      least = away;
      best = cell;
    }
  }
  return best;
}

/**
 * The place with more or fewer players: the same texture if it can be had, else the nearest.
 * @param cells - the map's cells
 * @param from - where the user is
 * @param by - +1 or −1
 * @returns the cell, or nothing when no texture has more (fewer) players
 */
export function cellWithPlayers(
  cells: readonly AtlasCell[],
  from: CellKey,
  by: 1 | -1,
): AtlasCell | undefined {
  const beyond = cells.filter((cell) => by * (cell.key.players - from.players) > 0);
  const counts = beyond.map((cell) => cell.key.players);
  if (counts.length === 0) return undefined;
  const players = by > 0 ? Math.min(...counts) : Math.max(...counts);
  return nearestCell(
    beyond.filter((cell) => cell.key.players === players),
    { ...from, players },
  );
}

/**
 * How many textures there are for each number of players.
 * @param cells - the map's cells
 * @returns rows of players and count, by players
 */
export function countsByPlayers(
  cells: readonly AtlasCell[],
): readonly { readonly players: number; readonly textures: number }[] {
  const counts = new Map<number, number>();
  for (const { key } of cells) counts.set(key.players, (counts.get(key.players) ?? 0) + 1);
  return [...counts.entries()]
    .sort(([a], [b]) => a - b)
    .map(([players, textures]) => ({ players, textures }));
}
