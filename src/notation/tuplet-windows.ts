import type { Count } from "../base/index.ts";
import type { Tuplet } from "../theory/index.ts";
import { groupLength } from "./metre-grid.ts";
import { tupletCounts } from "./note-value-table.ts";
import type { BarShape, Stretch } from "./bar-shape-types.ts";

/** A stretch of the bar that is divided as a tuplet. */
export interface TupletWindow {
  readonly from: Count;
  readonly to: Count;
  readonly tuplet: Tuplet;
  /** Length of one of its notes. */
  readonly unit: Count;
  readonly division: Count;
}

/**
 * Which beats of a bar are divided as tuplets.
 * @param stretches - notes and rests of the bar
 * @param shape - metre, division, where the bar begins
 * @returns windows in order, none overlapping; empty where plain values do
 * @throws RangeError where a beat is divided in a way that no tuplet of ours fits
 */
export function tupletWindows(
  stretches: readonly Stretch[],
  shape: BarShape,
): readonly TupletWindow[] {
  const end = stretches.at(-1)?.to ?? 0;
  const edges = [...new Set(stretches.flatMap(({ from, to }) => [from, to]))];
  const group = groupLength(shape);
  const windows: TupletWindow[] = [];
  // A pickup may begin in the middle of a beat.
  for (let beat = 0 - (shape.offset % group); beat < end;) {
    const wide = wideTriplet(edges, beat, group, shape);
    const found = wide === undefined ? beatTuplets(edges, beat, group, shape) : [wide];
    windows.push(...found);
    beat += wide === undefined ? group : 2 * group;
  }
  return windows.map((each) => ({
    ...each,
    from: Math.max(0, each.from),
    to: Math.min(end, each.to),
  }));
}

/** Three quarters in the time of two: both beats of half a bar, nothing on the second beat. */
function wideTriplet(
  edges: readonly Count[],
  from: Count,
  group: Count,
  shape: BarShape,
): TupletWindow | undefined {
  const to = from + 2 * group;
  const inside = edges.filter((edge) => edge > from && edge < to);
  const isHalfBar = (from + shape.offset) % (2 * group) === 0 && group === shape.division;
  const unit = (2 * group) / 3;
  const isThere = edges.some((edge) => edge <= from) && edges.some((edge) => edge >= to);
  const fits = inside.length > 0 && inside.every((edge) => ((edge - from) * 3) % (2 * group) === 0);
  if (!isHalfBar || !fits || !isThere) return undefined;
  return { from, to, tuplet: { notes: 3, inTimeOf: 2 }, unit, division: shape.division };
}

/** A beat that is cut in its middle is divided half by half. */
function beatTuplets(
  edges: readonly Count[],
  from: Count,
  length: Count,
  shape: BarShape,
): readonly TupletWindow[] {
  const half = length / 2;
  const isPlainBeat = Number.isInteger(Math.log2(length / shape.division));
  if (isPlainBeat && edges.includes(from + half))
    return [from, from + half].flatMap((at) => beatTuplet(edges, at, half, shape) ?? []);
  return [beatTuplet(edges, from, length, shape)].filter((each) => each !== undefined);
}

function beatTuplet(
  edges: readonly Count[],
  from: Count,
  length: Count,
  shape: BarShape,
): TupletWindow | undefined {
  const to = from + length;
  const inside = edges.filter((edge) => edge > from && edge < to).map((edge) => edge - from);
  const isPlain = (at: Count): boolean => (at * 32) % shape.division === 0;
  if (inside.every(isPlain)) return undefined;
  const fits = (notes: Count): boolean =>
    [1, 2, 4, 8].some((finer) => inside.every((at) => (at * notes * finer) % length === 0));
  const notes = tupletCounts.find(fits);
  if (notes === undefined)
    throw new RangeError(`no tuplet divides a beat of ${length} at ${inside.join(", ")}`);
  const inTimeOf = timeOf(notes, length, shape.division);
  const unit = length / notes;
  return { from, to, tuplet: { notes, inTimeOf }, unit, division: shape.division };
}

/** So many plain notes of one value fill the beat: the greatest power of two below, threes in 6/8. */
function timeOf(notes: Count, length: Count, division: Count): Count {
  let count = Number.isInteger(Math.log2(length / division)) ? 1 : 3;
  while (count * 2 < notes) count *= 2;
  return count;
}
