import type { Staff } from "../notation/index.ts";
import { groupColumns } from "./group-columns.ts";
import { STAFF_SPACE, type PreparedStaff } from "./music-staff.ts";
import { staffExtent } from "./staff-extent.ts";

/** Staves one a player are smaller than a grand staff. */
export const PLAYER_SCALE = 0.8;
/** Height of such a staff, top to bottom line, CSS pixels. */
export const PLAYER_STAFF_HEIGHT = 4 * STAFF_SPACE * PLAYER_SCALE;
/** Least width of a column: name, bracket, staff, degree. */
export const COLUMN_WIDTH = 178;
const BETWEEN_STAVES = 16;
const BETWEEN_GROUPS = 22;
const SYMBOL_ROOM = 22;

/** A staff with its place, CSS pixels. */
export interface PlacedStaff {
  readonly prepared: PreparedStaff;
  readonly x: number;
  /** Top line. */
  readonly y: number;
  /** Baseline of the chord symbol, where this staff shows one. */
  readonly symbolY?: number;
}

/** All groups, each a section, with their places. */
export interface PlacedGroups {
  readonly groups: readonly (readonly PlacedStaff[])[];
  readonly bottom: number;
}

/** Room one row of staves needs; groups side by side share their rows. */
interface Row {
  readonly above: number;
  readonly below: number;
  readonly hasSymbol: boolean;
}

type Group = readonly PreparedStaff[];

/**
 * Sections of a list of staves.
 * @param staves - in score order
 * @returns staves by section, order kept
 */
export function bySection(staves: readonly Staff[]): readonly (readonly Staff[])[] {
  const groups: Staff[][] = [];
  for (const staff of staves) {
    const group = groups.at(-1);
    if (group?.[0]?.player?.section === staff.player?.section) group?.push(staff);
    else groups.push([staff]);
  }
  return groups;
}

/**
 * Finds a place for every staff: sections side by side as far as the width allows.
 * @param groups - prepared staves by section
 * @param area - width, top, and whether chord symbols stand above the staves
 * @returns places, and where the lowest staff ends
 */
export function placePlayerStaves(
  groups: readonly Group[],
  area: { readonly width: number; readonly top: number; readonly hasSymbols: boolean },
): PlacedGroups {
  const columns = groupColumns(groups, Math.floor(area.width / COLUMN_WIDTH));
  const isLevel = columns.every((column) => column.length === 1);
  const shared = isLevel ? rowsOf(groups, area.hasSymbols) : undefined;
  let bottom = area.top;
  const placed = columns.flatMap((column, index) => {
    const x = (index * area.width) / columns.length;
    let y = area.top;
    return column.map((group) => {
      const staves = placeGroup(group, shared ?? rowsOf([group], area.hasSymbols), { x, y });
      const end = endOf(staves);
      bottom = Math.max(bottom, end);
      y = end + BETWEEN_GROUPS;
      return staves;
    });
  });
  return { groups: placed, bottom };
}

function rowsOf(groups: readonly Group[], hasSymbols: boolean): readonly Row[] {
  const count = Math.max(0, ...groups.map((group) => group.length));
  return Array.from({ length: count }, (_, index) => {
    const extents = groups.flatMap((group) => group.slice(index, index + 1)).map(extentOf);
    return {
      above: Math.max(...extents.map((extent) => extent.above)),
      below: Math.max(...extents.map((extent) => extent.below)),
      hasSymbol: hasSymbols && groups.some((group) => startsRun(group, index)),
    };
  });
}

function extentOf({ staff }: PreparedStaff): { readonly above: number; readonly below: number } {
  const { above, below } = staffExtent(staff);
  return { above: above * PLAYER_SCALE, below: below * PLAYER_SCALE };
}

/** True where a staff reads another chord symbol than the staff above it. */
function startsRun(group: Group, index: number): boolean {
  const symbol = group[index]?.staff.chordSymbol;
  return symbol !== undefined && symbol !== group[index - 1]?.staff.chordSymbol;
}

function placeGroup(
  group: Group,
  rows: readonly Row[],
  start: { readonly x: number; readonly y: number },
): readonly PlacedStaff[] {
  let free = start.y;
  return group.map((prepared, index) => {
    const row = rows[index] ?? { above: 0, below: 0, hasSymbol: false };
    const y = free + (row.hasSymbol ? SYMBOL_ROOM : 0) + row.above;
    free = y + PLAYER_STAFF_HEIGHT + row.below + BETWEEN_STAVES;
    const hasSymbol = row.hasSymbol && startsRun(group, index);
    return { prepared, x: start.x, y, ...(hasSymbol && { symbolY: y - row.above - 7 }) };
  });
}

function endOf(staves: readonly PlacedStaff[]): number {
  const last = staves.at(-1);
  if (!last) return 0;
  return last.y + PLAYER_STAFF_HEIGHT + extentOf(last.prepared).below;
}
