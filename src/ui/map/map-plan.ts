import { scaleLinear } from "d3-scale";

/** Sizes the map is drawn with, CSS pixels. */
export interface MapSizes {
  /** Width at hand. */
  readonly width: number;
  /** Room left of the first column. */
  readonly left: number;
  /** Room right of the last column, for the hexagons at its corners. */
  readonly right: number;
  /** From one column or row to the next at their largest, and at their smallest. */
  readonly columnStep: readonly [least: number, most: number];
  readonly rowStep: number;
  /** Ground between two places. */
  readonly between: number;
}

export const deskSizes = {
  left: 4,
  right: 10,
  columnStep: [28, 38],
  rowStep: 30,
  between: 4,
} as const;
export const touchSizes = {
  left: 4,
  right: 12,
  columnStep: [46, 46],
  rowStep: 46,
  between: 2,
} as const;

/** A stretch of spans without any place. */
export interface MapGap {
  readonly from: number;
  readonly to: number;
  readonly x: number;
  readonly width: number;
}

/** Where everything on the map lies, CSS pixels. */
export interface MapPlan {
  readonly spans: readonly number[];
  /** Rows top to bottom: distinct notes, falling. */
  readonly rows: readonly number[];
  readonly gaps: readonly MapGap[];
  /** Left edge of a span's places; between two columns for a span that has none. */
  readonly xOf: (span: number) => number;
  readonly yOf: (notes: number) => number;
  readonly placeWidth: number;
  readonly placeHeight: number;
  readonly width: number;
  readonly height: number;
}

/** A gap is drawn when this many semitones or more hold nothing. */
const gapFrom = 5;
const gapWidth = 18;

/**
 * Lays the map out: one column a span that has places, one row a number of notes.
 * @param spans - spans with places, any order, semitones
 * @param notes - numbers of notes with places, any order
 * @param sizes - room and measures
 * @returns where everything lies; wider than the room when there are many spans
 */
export function mapPlan(
  spans: readonly number[],
  notes: readonly number[],
  sizes: MapSizes,
): MapPlan {
  const columns = [...new Set(spans)].sort((a, b) => a - b);
  const most = Math.max(...notes, 1);
  const least = Math.min(...notes, most);
  const rows = Array.from({ length: most - least + 1 }, (_, index) => most - index);
  const isGap = (index: number) => isGapBefore(columns, index);
  const gapCount = columns.filter((_, index) => isGap(index)).length;
  const room = sizes.width - sizes.left - sizes.right - gapCount * gapWidth + sizes.between;
  const [smallest, largest] = sizes.columnStep;
  const step = Math.max(
    smallest,
    Math.min(largest, Math.floor((10 * room) / Math.max(1, columns.length)) / 10),
  );
  const gaps: MapGap[] = [];
  let x = sizes.left;
  const lefts = columns.map((span, index) => {
    if (isGap(index)) {
      const from = (columns[index - 1] ?? 0) + 1;
      gaps.push({ from, to: span - 1, x: x + 1, width: gapWidth - sizes.between });
      x += gapWidth;
    }
    const left = x;
    x += step;
    return left;
  });
  return {
    spans: columns,
    rows,
    gaps,
    xOf: interpolated(columns, lefts, step),
    yOf: (count) => (most - count) * sizes.rowStep,
    placeWidth: step - sizes.between,
    placeHeight: sizes.rowStep - sizes.between,
    width: x - sizes.between,
    height: rows.length * sizes.rowStep - sizes.between,
  };
}

function isGapBefore(columns: readonly number[], index: number): boolean {
  const here = columns[index] ?? 0;
  const before = columns[index - 1] ?? here;
  return here - before >= gapFrom && before >= 12;
}

/**
 * The stretches of spans that a map draws as hatched gaps.
 * @param spans - spans with places, any order, semitones
 * @returns lowest and highest span of each gap
 */
export function gapsOf(spans: readonly number[]): readonly { from: number; to: number }[] {
  const columns = [...new Set(spans)].sort((a, b) => a - b);
  return columns.flatMap((span, index) =>
    isGapBefore(columns, index) ? [{ from: (columns[index - 1] ?? 0) + 1, to: span - 1 }] : [],
  );
}

/**
 * The rows to show on a small screen: a few around the place in view.
 * @param rows - numbers of notes with places
 * @param here - the row in view
 * @param most - how many rows to show
 * @returns lowest and highest row
 */
export function rowWindow(
  rows: readonly number[],
  here: number,
  most: number,
): readonly [low: number, high: number] {
  const low = Math.min(...rows, here);
  const high = Math.max(...rows, here);
  const from = Math.max(low, Math.min(here - Math.floor(most / 2), high - most + 1));
  return [from, Math.min(high, from + most - 1)];
}

/** Left edges of columns; a span between two columns lies between them. */
function interpolated(
  columns: readonly number[],
  lefts: readonly number[],
  step: number,
): (span: number) => number {
  const first = columns[0] ?? 0;
  const last = columns[columns.length - 1] ?? 0;
  if (columns.length < 2) return () => lefts[0] ?? 0;
  const scale = scaleLinear().domain(columns).range(lefts);
  return (span) => {
    if (span < first) return (lefts[0] ?? 0) - step / 2;
    if (span > last) return (lefts[lefts.length - 1] ?? 0) + step / 2;
    return scale(span);
  };
}

/**
 * How far to scroll sideways so that a span is seen with some places around it; always to the left
 * edge of a column, so that none is cut there.
 * @param plan - the map
 * @param span - the span to see, semitones
 * @param now - how far the map is scrolled, CSS pixels
 * @param room - width of the window onto the map, CSS pixels
 * @returns how far to scroll, CSS pixels
 */
export function scrollFor(plan: MapPlan, span: number, now: number, room: number): number {
  const x = plan.xOf(span);
  const margin = 3 * plan.placeWidth;
  const isSeen = x - margin >= now && x + margin + plan.placeWidth <= now + room;
  if (plan.width <= room || isSeen) return plan.width <= room ? 0 : now;
  const wanted = x < now + margin ? x - margin : x + plan.placeWidth + margin - room;
  const edges = plan.spans.map(
    (each) => plan.xOf(each) - (plan.spans[0] === each ? plan.xOf(each) : 2),
  );
  return edges.find((edge) => edge >= wanted) ?? wanted;
}
