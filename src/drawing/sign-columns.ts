import type { AccidentalSign } from "../notation/index.ts";

/** How far a sign reaches above and below its line or space, in half-spaces, with a hair's room. */
const REACH: Readonly<Record<AccidentalSign, { readonly up: number; readonly down: number }>> = {
  none: { up: 0, down: 0 },
  natural: { up: 2.9, down: 2.9 },
  flat: { up: 3.6, down: 1.4 },
  sharp: { up: 2.9, down: 2.9 },
  "double-flat": { up: 3.6, down: 1.4 },
  "double-sharp": { up: 1.2, down: 1.2 },
};

/** A sign at its height. */
export interface PlacedSign {
  readonly sign: AccidentalSign;
  /** Half-spaces above the bottom line. */
  readonly step: number;
}

/** Above and below what stands on the line, half-spaces. */
export function signReach(sign: AccidentalSign): { readonly up: number; readonly down: number } {
  return REACH[sign];
}

function collides(a: PlacedSign, b: PlacedSign): boolean {
  const [upper, lower] = a.step >= b.step ? [a, b] : [b, a];
  return upper.step - REACH[upper.sign].down < lower.step + REACH[lower.sign].up;
}

/** Outside first: top, bottom, second from the top, second from the bottom … */
function zigzag(count: number): readonly number[] {
  return Array.from({ length: count }, (_, turn) =>
    turn % 2 === 0 ? count - 1 - turn / 2 : (turn - 1) / 2,
  );
}

/**
 * Columns for the accidentals of one chord, as engravers set them: outermost signs next to the
 * heads, then inwards by turns, each in the column nearest to the heads where it touches none.
 * @param signs - low to high; "none" takes no room
 * @returns for each sign its column, 0 next to the heads; 0 for "none"
 * @source common practice, no single source (flats a sixth apart and others a seventh apart share a
 * column)
 */
export function signColumns(signs: readonly PlacedSign[]): readonly number[] {
  const columns: PlacedSign[][] = [];
  const result = signs.map(() => 0);
  for (const index of zigzag(signs.length)) {
    const sign = signs[index];
    if (!sign || sign.sign === "none") continue;
    const free = columns.findIndex((column) => !column.some((other) => collides(sign, other)));
    const column = free < 0 ? columns.length : free;
    (columns[column] ??= []).push(sign);
    result[index] = column;
  }
  return inHeadOrder(signs, result);
}

/** Two forms of one letter stand side by side: their signs go in the order of their heads. */
function inHeadOrder(signs: readonly PlacedSign[], columns: readonly number[]): readonly number[] {
  return signs.reduce((current, sign, index) => {
    const [low = 0, high = 0] = [current[index - 1], current[index]];
    if (signs[index - 1]?.step !== sign.step || low >= high) return current;
    const swapped = replaced(current, [index - 1, high], [index, low]);
    return isClear(signs, swapped) ? swapped : current;
  }, columns);
}

function replaced(
  list: readonly number[],
  ...changes: readonly (readonly [index: number, value: number])[]
): readonly number[] {
  const changed = new Map(changes);
  return list.map((value, index) => changed.get(index) ?? value);
}

function isClear(signs: readonly PlacedSign[], columns: readonly number[]): boolean {
  return signs.every((sign, index) =>
    signs.every(
      (other, otherIndex) =>
        otherIndex >= index ||
        columns[index] !== columns[otherIndex] ||
        sign.sign === "none" ||
        other.sign === "none" ||
        !collides(sign, other),
    ),
  );
}
