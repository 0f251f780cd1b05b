import { ok, type Result } from "../base/index.ts";
import { builtInstance } from "./built-instance.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { lineCells } from "./lines.ts";
import { chairScale } from "./ranking.ts";
import { hasLines, restrictedTo, type SearchOptions } from "./search-options.ts";
import { SpanBest } from "./span-best.ts";
import { spansOf, type Ends } from "./spans.ts";
import { StackLister } from "./stack-lister.ts";
import type { StackPool } from "./stack-pool.ts";
import { StackSolver } from "./stack-solver.ts";
import { indicesByBound } from "./bound-order.ts";
import type { Atlas, AtlasCell, AtlasProgress, CellKey, Question } from "./voicing-types.ts";

/** Full assignments between two reports, so that a caller can stop in time. */
const solvesBetweenReports = 400;
const sectionedBetweenReports = 20;

interface Work {
  readonly instance: Instance;
  readonly mostNotes: number;
  readonly lister: StackLister;
  readonly solver: StackSolver;
}

/**
 * Searches the whole space of textures of a question, narrow spans first. What it yields is final,
 * and the same however it is stepped through.
 * @param question - the question
 * @param options - layer, sections, most notes
 * @returns a generator of progress that ends with the atlas; or the problem with the question
 */
export function searchAtlas(
  question: Question,
  options: SearchOptions = {},
): Result<Generator<AtlasProgress, Atlas>> {
  const restricted = restrictedTo(question, options.sections);
  if (!restricted.ok) return restricted;
  const built = builtInstance(restricted.value);
  return built.ok ? ok(searchInstance(restricted.value, built.value, options)) : built;
}

function* searchInstance(
  question: Question,
  instance: Instance,
  options: SearchOptions,
): Generator<AtlasProgress, Atlas> {
  const { layer = "free", mostNotes = instance.players.length } = options;
  const spans = spansOf(instance);
  const groups = spans.size + 1;
  const most = Math.min(mostNotes, instance.players.length);
  const lister = new StackLister(instance, instance.playerCost, { least: 2, most });
  const solver = new StackSolver(question, instance, options);
  const work: Work = { instance, mostNotes: most, lister, solver };
  const cells: AtlasCell[] = hasLines(options) ? [...lineCells(question, instance)] : [];
  let groupsDone = 1;
  yield { groupsDone, groups, cells: [...cells] };
  for (const [span, pairs] of spans) {
    const best = new SpanBest(instance.players.length + 1);
    for (const pair of pairs)
      for (const cellsSoFar of searchPair(work, pair, best))
        yield { groupsDone, groups, cells: cellsSoFar };
    const found = cellsOfSpan(work, span, best);
    cells.push(...found);
    yield { groupsDone: ++groupsDone, groups, cells: found };
  }
  const { solved } = solver;
  const stacks = lister.listed;
  const counts = { stacks, pruned: stacks - solved, solved, cells: cells.length };
  return { layer, cells: sortedCells(cells), counts, emptiedBy: [] };
}

/** All stacks between one highest and one lowest note, a pool at a time; no cell is final before. */
function* searchPair(work: Work, { top, bottom }: Ends, best: SpanBest): Generator<[], void> {
  const { lister } = work;
  lister.begin(top, bottom);
  for (let full = lister.fill(); full >= 0; full = lister.fill()) {
    yield* searchPool(work, lister.pools[full]!, full, best);
    lister.empty(full);
    yield [];
  }
  for (let notes = 2; notes <= work.mostNotes; notes++) {
    const pool = lister.pools[notes]!;
    if (pool.count > 0) yield* searchPool(work, pool, notes, best);
  }
}

function* searchPool(
  work: Work,
  pool: StackPool,
  notes: number,
  best: SpanBest,
): Generator<[], void> {
  const { solver } = work;
  const counts = work.instance.players.length + 1;
  const between = solver.isSectioned ? sectionedBetweenReports : solvesBetweenReports;
  const isDone = new Uint8Array(pool.count);
  for (const seed of seedsOf(pool, notes, counts)) {
    solver.solveInto(best, pool, seed, notes);
    isDone[seed] = 1;
  }
  let sinceReport = 0;
  for (const at of likelyFirst(pool, counts)) {
    if (isDone[at] === 1 || !best.mayImprove(pool, at, notes, 0)) continue;
    const more = solver.beyondBounds(pool, at, notes);
    if (more === cannot || !best.mayImprove(pool, at, notes, more)) continue;
    solver.solveInto(best, pool, at, notes);
    if (++sinceReport % between === 0) yield [];
  }
}

/** For each number of players, the stack with the lowest bound: a good first guess. */
function seedsOf(pool: StackPool, notes: number, counts: number): ReadonlySet<number> {
  const seeds = new Set<number>();
  for (let k = notes; k < counts; k++) {
    let seed = -1;
    let least = cannot;
    for (let at = 0; at < pool.count; at++) {
      const bound = pool.bounds[at * counts + k]!;
      if (bound >= least) continue;
      least = bound;
      seed = at;
    }
    if (seed >= 0) seeds.add(seed);
  }
  return seeds;
}

/** Stacks in order of their bound for everyone playing: likely winners first. */
function likelyFirst(pool: StackPool, counts: number): Float64Array {
  return indicesByBound(pool.count, (at) => {
    const bound = pool.bounds[at * counts + counts - 1]!;
    return bound === cannot ? pool.cost[at]! * chairScale : bound;
  });
}

/** The best of each cell of a span, with who plays what; cells of one stack are worked out at once. */
function cellsOfSpan(work: Work, span: number, best: SpanBest): readonly AtlasCell[] {
  const byStack = new Map<string, CellKey[]>();
  for (let notes = 2; notes <= work.mostNotes; notes++)
    for (let players = notes; players <= work.instance.players.length; players++) {
      if (best.valueAt(notes, players) === cannot) continue;
      const name = best.stackAt(notes, players).join();
      const keys = byStack.get(name) ?? [];
      if (keys.length === 0) byStack.set(name, keys);
      keys.push({ span, notes, players });
    }
  const cells = [...byStack.values()].flatMap((keys) => {
    const { notes, players } = keys[0]!;
    const stack = best.stackAt(notes, players);
    return work.solver.cellsOf(stack, keys, (key) => best.valueAt(key.notes, key.players));
  });
  return sortedCells(cells);
}

function sortedCells(cells: readonly AtlasCell[]): readonly AtlasCell[] {
  return [...cells].sort(
    (a, b) => a.key.span - b.key.span || a.key.notes - b.key.notes || a.key.players - b.key.players,
  );
}
