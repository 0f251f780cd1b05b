import { ok, quantity, type Count, type Result, type Semitones } from "../base/index.ts";
import { buildInstance } from "./instance.ts";
import { cannot } from "./instance-types.ts";
import { lineCells } from "./lines.ts";
import { hasLines, restrictedTo, type SearchOptions } from "./search-options.ts";
import { spansOf } from "./spans.ts";
import { StackLister } from "./stack-lister.ts";
import type { StackPool } from "./stack-pool.ts";
import { comesBefore, type SetWord } from "./stack-sets.ts";
import { StackSolver } from "./stack-solver.ts";
import { indicesByBound } from "./bound-order.ts";
import type { AtlasCell, CellKey, Question } from "./voicing-types.ts";

/** A stack of the cell with its value. */
interface Kept {
  readonly value: Count;
  readonly high: SetWord;
  readonly low: SetWord;
}

/** The best stacks of one cell so far. */
interface Keeping {
  /** Players without one who plays an octave above the lead. */
  readonly key: CellKey;
  readonly counts: Count;
  readonly solver: StackSolver;
  /** How many are kept. */
  readonly room: Count;
  kept: readonly Kept[];
}

/**
 * The best voicings of one cell, each of another stack, best first.
 * @param question - the question
 * @param key - the cell
 * @param count - how many at most
 * @param options - layer and sections
 * @returns up to `count` cells' worth of voicings, lines after the others; empty where the cell
 *   is out of reach; or the problem with the question
 */
export function bestOfCell(
  question: Question,
  key: CellKey,
  count: Count,
  options: SearchOptions = {},
): Result<readonly AtlasCell[]> {
  const restricted = restrictedTo(question, options.sections);
  if (!restricted.ok) return restricted;
  const asked = restricted.value;
  const built = buildInstance(asked);
  if (!built.ok) return built;
  const instance = built.value;
  const beside = asked.octaveAbovePlayer === undefined ? 0 : 1;
  const keeping: Keeping = {
    key: { ...key, players: key.players - beside },
    counts: instance.players.length + 1,
    solver: new StackSolver(asked, instance, options),
    room: count,
    kept: [],
  };
  const { notes } = key;
  const isReachable = notes >= 2 && keeping.key.players < keeping.counts;
  const lister = new StackLister(instance, instance.playerCost, { least: notes, most: notes });
  const pairs = spansOf(instance).get(quantity<Semitones>(key.span)) ?? [];
  for (const { top, bottom } of isReachable ? pairs : []) {
    lister.begin(top, bottom);
    for (let full = lister.fill(); full >= 0; full = lister.fill()) {
      keepBest(keeping, lister.pools[full]!);
      lister.empty(full);
    }
    const rest = lister.pools[notes];
    if (rest) keepBest(keeping, rest);
  }
  const harmony = cellsOf(keeping);
  const lines = hasLines(options)
    ? lineCells(asked, instance).filter((cell) => isSameCell(cell.key, key))
    : [];
  return ok([...harmony, ...lines].slice(0, Math.max(count, lines.length)));
}

function cellsOf({ kept, key, solver }: Keeping): readonly AtlasCell[] {
  return kept.flatMap(({ value, high, low }) => solver.cellsOf([high, low], [key], () => value));
}

function isSameCell(a: CellKey, b: CellKey): boolean {
  return a.span === b.span && a.notes === b.notes && a.players === b.players;
}

/** Goes through the stacks of a pool by their bound and keeps the best. */
function keepBest(into: Keeping, pool: StackPool): void {
  const { key, counts, room, solver } = into;
  const boundOf = (at: Count): Count => pool.bounds[at * counts + key.players]!;
  for (const at of indicesByBound(pool.count, boundOf)) {
    const worst = into.kept.length < room ? cannot : into.kept[room - 1]!.value;
    if (boundOf(at) === cannot || boundOf(at) > worst) return;
    const more = solver.beyondBounds(pool, at, key.notes);
    if (more === cannot || boundOf(at) + more > worst) continue;
    const value = solver.valueOf(pool, at, key, worst);
    if (value === cannot) continue;
    const found: Kept = { value, high: pool.high[at]!, low: pool.low[at]! };
    into.kept = [...into.kept, found].sort(inOrder).slice(0, room);
  }
}

function inOrder(a: Kept, b: Kept): number {
  return a.value - b.value || (comesBefore(a.high, a.low, b.high, b.low) ? -1 : 1);
}
