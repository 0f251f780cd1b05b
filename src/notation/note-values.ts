import type { Count } from "../base/index.ts";
import type { Tuplet } from "../theory/index.ts";
import { boundaryStrength, groupLength, type Grid } from "./metre-grid.ts";
import { noteValues, type NoteValueName } from "./note-value-table.ts";
import type { BarShape, Stretch } from "./bar-shape-types.ts";
import { tupletWindows, type TupletWindow } from "./tuplet-windows.ts";

/** One written value: a note head with its length, or a rest. */
export interface WrittenValue {
  /** Index of the stretch it belongs to. */
  readonly stretch: Count;
  readonly from: Count;
  readonly length: Count;
  readonly value: NoteValueName;
  readonly dots: 0 | 1;
  readonly tuplet?: Tuplet;
  /** The value the tuplet is counted in. */
  readonly tupletValue?: NoteValueName;
  readonly beginsTuplet?: true;
  readonly endsTuplet?: true;
}

/**
 * Writes the stretches of a bar as note values: tied where one value does not do, the middle and the
 * beats of the bar kept visible, triplets and other tuplets where the beats are divided so.
 * @param stretches - one behind the other, without gaps
 * @param shape - metre, division, where the bar begins
 * @returns values in order; those of one stretch are to be tied
 * @throws RangeError where no value of ours is short enough
 * @source grouping by beats, middle of the bar visible: common practice, no single source
 */
export function writtenValues(
  stretches: readonly Stretch[],
  shape: BarShape,
): readonly WrittenValue[] {
  const windows = tupletWindows(stretches, shape);
  return stretches.flatMap((stretch, index) =>
    piecesOf(stretch, windows).flatMap(({ from, to, window }) => {
      const piece = { from, to, isRest: stretch.isRest };
      const values = window === undefined ? plainValues(piece, shape) : insideTuplet(piece, window);
      return values.map((value) => ({ stretch: index, ...value }));
    }),
  );
}

interface Piece {
  readonly from: Count;
  readonly to: Count;
  readonly window?: TupletWindow;
}

/** Cuts a stretch at the edges of tuplets. */
function piecesOf({ from, to }: Stretch, windows: readonly TupletWindow[]): readonly Piece[] {
  const pieces: Piece[] = [];
  let at = from;
  while (at < to) {
    const window = windows.find((each) => each.from <= at && at < each.to);
    const nextEdge = window?.to ?? windows.find((each) => each.from > at)?.from ?? to;
    const end = Math.min(to, nextEdge);
    pieces.push(window === undefined ? { from: at, to: end } : { from: at, to: end, window });
    at = end;
  }
  return pieces;
}

type Value = Omit<WrittenValue, "stretch">;

/** Name and dot of a length, if one value fills it. */
function singleValue(
  length: Count,
  division: Count,
): Pick<WrittenValue, "value" | "dots"> | undefined {
  const inWholes = length / (4 * division);
  for (const [value, wholes] of noteValues) {
    if (inWholes === wholes) return { value, dots: 0 };
    if (inWholes === wholes * 1.5) return { value, dots: 1 };
  }
  return undefined;
}

function plainValues(stretch: Stretch, shape: BarShape): readonly Value[] {
  const { from, to, isRest } = stretch;
  const single = singleValue(to - from, shape.division);
  const grid: Grid = { metre: shape.metre, division: shape.division };
  const inside = boundariesInside(from + shape.offset, to + shape.offset, grid);
  if (single !== undefined && isReadable(stretch, single.dots, inside, shape))
    return [{ from, length: to - from, ...single }];
  const cut = cutOf(inside, from + shape.offset, shape.division);
  if (cut === undefined)
    throw new RangeError(`no note value for ${to - from} of ${shape.division} to a quarter`);
  const at = cut - shape.offset;
  return [
    ...plainValues({ from, to: at, isRest }, shape),
    ...plainValues({ from: at, to, isRest }, shape),
  ];
}

interface Boundary {
  readonly at: Count;
  readonly strength: Count;
}

/** Places inside a stretch where it could be cut, with their metrical strength. */
function boundariesInside(from: Count, to: Count, grid: Grid): readonly Boundary[] {
  const step = Math.max(grid.division / 32, smallestStep(grid.division));
  const found: Boundary[] = [];
  for (let at = Math.floor(from / step) * step + step; at < to; at += step)
    found.push({ at, strength: boundaryStrength(at, grid) });
  return found;
}

/** The shortest plain length that is a whole number of divisions. */
function smallestStep(division: Count): Count {
  let step = division;
  while (step % 2 === 0) step /= 2;
  return step;
}

/** Whether one value may stand over these boundaries. */
function isReadable(
  { from, to, isRest }: Stretch,
  dots: 0 | 1,
  inside: readonly Boundary[],
  { metre, division, offset }: BarShape,
): boolean {
  const own = boundaryStrength(from + offset, { metre, division });
  const crossed = Math.max(0, ...inside.map(({ strength }) => strength));
  const isDottedRest =
    isRest && dots > 0 && Number.isInteger(Math.log2(groupLength({ metre, division }) / division));
  if (crossed <= own) return !isDottedRest;
  if (isRest || dots > 0 || crossed > own + 1) return false;
  // A plain syncopation, its middle on the next stronger place: eighth, quarter, eighth.
  const middle = (from + to) / 2 + offset;
  return crossed < 4 && inside.some(({ at, strength }) => at === middle && strength === crossed);
}

/** The strongest place inside; of several the last one that leaves a single value before it. */
function cutOf(inside: readonly Boundary[], from: Count, division: Count): Count | undefined {
  const strongest = Math.max(...inside.map(({ strength }) => strength));
  const places = inside.filter(({ strength }) => strength === strongest).map(({ at }) => at);
  return places.filter((at) => singleValue(at - from, division) !== undefined).at(-1) ?? places[0];
}

/** Values inside a tuplet, counted in its own notes. */
function insideTuplet({ from, to }: Stretch, window: TupletWindow): readonly Value[] {
  const { notes, inTimeOf } = window.tuplet;
  const values: Value[] = [];
  let at = from;
  while (at < to) {
    const found = longestInside(to - at, window);
    values.push({
      from: at,
      ...found,
      tuplet: window.tuplet,
      tupletValue: singleValue((window.unit * notes) / inTimeOf, window.division)!.value,
      ...(at === window.from ? { beginsTuplet: true as const } : {}),
      ...(at + found.length === window.to ? { endsTuplet: true as const } : {}),
    });
    at += found.length;
  }
  return values;
}

function longestInside(
  length: Count,
  { tuplet, division }: TupletWindow,
): Pick<Value, "length" | "value" | "dots"> {
  const factor = tuplet.notes / tuplet.inTimeOf;
  for (const [value, wholes] of noteValues)
    for (const dots of [1, 0] as const) {
      const wanted = (wholes * (dots === 1 ? 1.5 : 1) * 4 * division) / factor;
      if (Number.isInteger(wanted) && wanted <= length) return { length: wanted, value, dots };
    }
  throw new RangeError(`no note value for ${length} inside a tuplet of ${tuplet.notes}`);
}
