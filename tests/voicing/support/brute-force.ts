import type { PrintedCell, PrintedProblem } from "../../../src/voicing/problem.ts";

/**
 * The slow, obvious judge: reads a printed problem as a stranger would and tries everything.
 * Shares no code with the search.
 */
interface Found {
  readonly cost: number;
  readonly chairCost: number;
  readonly stack: readonly number[];
  readonly places: readonly (number | null)[];
}

const keyOf = (span: number, notes: number, players: number): string =>
  `${span} ${notes} ${players}`;

function subsets(size: number, most: number): number[][] {
  let all: number[][] = [[]];
  for (let c = 0; c < size; c++)
    all = [...all, ...all.filter((set) => set.length < most).map((set) => [...set, c])];
  return all.filter((set) => set.length >= 2);
}

function stackCost(
  problem: PrintedProblem,
  stack: readonly number[],
  groups: (notes: number) => readonly (readonly number[])[] | null,
  bottomCostOf: ReadonlyMap<number, number>,
): number | null {
  const notes = stack.length;
  const bottom = stack[notes - 1]!;
  const span = problem.candidates[stack[0]!]! - problem.candidates[bottom]!;
  if (span <= 0 || !stack.includes(problem.lead) || !bottomCostOf.has(bottom)) return null;
  const isForbidden = problem.forbiddenPairs.some(
    ([a, b]) => stack.includes(a) && stack.includes(b),
  );
  if (isForbidden) return null;
  const wanted = groups(notes);
  if (!wanted || !wanted.every((group) => group.some((c) => stack.includes(c)))) return null;
  let cost = bottomCostOf.get(bottom)!;
  for (let i = 0; i + 1 < notes; i++) {
    const isLowest = i + 2 === notes;
    const table = !isLowest
      ? problem.neighbours
      : notes === 3
        ? problem.lowestNeighboursOfThree
        : problem.lowestNeighbours;
    const pair = table.find((each) => each.upper === stack[i] && each.lower === stack[i + 1]);
    if (!pair) return null;
    cost += pair.cost + problem.innerCost[stack[i]!]!;
  }
  for (const { members, each } of problem.copies) {
    const sounding = members.filter((c) => stack.includes(c)).length;
    if (sounding > 1) cost += (sounding - 1) * each;
  }
  return cost;
}

function fitsLayer(
  problem: PrintedProblem,
  stack: readonly number[],
  places: readonly (number | null)[],
): boolean {
  const sections = [...new Set(problem.players.map((player) => player.section))];
  return sections.every((section) => {
    const own = places.filter((_, p) => problem.players[p]!.section === section);
    const sounding = own.filter((place) => place !== null);
    if (problem.mustSound.includes(section) && sounding.length === 0) return false;
    const notes = [...new Set(sounding)].map((c) => stack.indexOf(c)).sort((a, b) => a - b);
    const gaps = notes.slice(1).map((at, i) => at - notes[i]!);
    if (problem.layer === "crossed") return gaps.every((gap) => gap > 1);
    if (problem.layer === "by-section") {
      const least = sounding.length >= 3 ? (stack.length <= 4 ? 2 : 3) : 0;
      return gaps.every((gap) => gap === 1) && notes.length >= least;
    }
    return true;
  });
}

function firstInOrder(a: Found, b: Found): Found {
  if (a.cost !== b.cost) return a.cost < b.cost ? a : b;
  if (a.chairCost !== b.chairCost) return a.chairCost < b.chairCost ? a : b;
  for (let i = 0; i < a.stack.length; i++)
    if (a.stack[i] !== b.stack[i]) return a.stack[i]! < b.stack[i]! ? a : b;
  for (let p = 0; p < a.places.length; p++) {
    const left = a.places[p] ?? 999;
    const right = b.places[p] ?? 999;
    if (left !== right) return left < right ? a : b;
  }
  return a;
}

/** Every cell's best by trying every stack and every assignment; key "span notes players". */
export function bruteForce(
  problem: PrintedProblem,
  groupsByNotes: (notes: number) => readonly (readonly number[])[],
  bottomCostOf: ReadonlyMap<number, number>,
): ReadonlyMap<string, Found> {
  const best = new Map<string, Found>();
  const isLine = (stack: readonly number[]): boolean =>
    stack.every((c) => (problem.candidates[problem.lead]! - problem.candidates[c]!) % 12 === 0);
  for (const stack of subsets(problem.candidates.length, problem.players.length)) {
    if (isLine(stack)) continue;
    const base = stackCost(problem, stack, groupsByNotes, bottomCostOf);
    if (base === null) continue;
    const span = problem.candidates[stack[0]!]! - problem.candidates[stack[stack.length - 1]!]!;
    for (const places of assignments(problem, stack)) {
      if (!fitsLayer(problem, stack, places)) continue;
      const players = places.filter((place) => place !== null).length;
      const key = keyOf(span, stack.length, players);
      const found = priced(problem, stack, places, base);
      const before = best.get(key);
      best.set(key, before ? firstInOrder(before, found) : found);
    }
  }
  return best;
}

function* assignments(
  problem: PrintedProblem,
  stack: readonly number[],
): Generator<readonly (number | null)[]> {
  const places: (number | null)[] = [];
  function* from(p: number): Generator<readonly (number | null)[]> {
    if (p === problem.players.length) {
      if (stack.every((c) => places.includes(c))) yield [...places];
      return;
    }
    const { heldTo, cost } = problem.players[p]!;
    const options: (number | null)[] = heldTo === null ? [null, ...stack] : [heldTo];
    for (const option of options) {
      if (option !== null && (cost[option] === null || !stack.includes(option))) continue;
      places.push(option);
      yield* from(p + 1);
      places.pop();
    }
  }
  yield* from(0);
}

function priced(
  problem: PrintedProblem,
  stack: readonly number[],
  places: readonly (number | null)[],
  base: number,
): Found {
  let cost = base;
  let chairCost = 0;
  places.forEach((place, p) => {
    if (place === null) return;
    cost += problem.players[p]!.cost[place]!;
    chairCost += problem.players[p]!.chair * (12 - stack.indexOf(place));
  });
  for (const c of stack) {
    const here = problem.players.filter((_, p) => places[p] === c);
    for (let m = 0; m < here.length; m++) cost += problem.sharedNote[c]![m]!;
    for (const section of new Set(here.map((player) => player.section))) {
      const count = here.filter((player) => player.section === section).length;
      for (let m = 0; m < count; m++) cost += problem.sharedInSection[c]![m]!;
    }
  }
  return { cost, chairCost, stack, places };
}

/** The key of a printed cell. */
export function printedKey(cell: PrintedCell): string {
  return keyOf(cell.span, cell.notes, cell.players);
}
