import { fail, ok, type Count, type Result } from "../base/index.ts";
import type { SectionId } from "../band/index.ts";
import {
  chairScale,
  createAssigner,
  freeAssignment,
  type Assigner,
  type AssignmentLimits,
} from "./assignment.ts";
import { buildInstance } from "./instance.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { createStackLister, type StackLister, type StackPool } from "./stack-pool.ts";
import { createSectionedAssigner, type SectionedAssigner } from "./sectioned-assignment.ts";
import { lineCells } from "./lines.ts";
import { toCell } from "./cell.ts";
import { createCoverageBound, type CoverageBound } from "./coverage-bound.ts";
import { comesBefore, readStack } from "./stack-sets.ts";
import type {
  Atlas,
  AtlasCell,
  AtlasCounts,
  AtlasProgress,
  CellKey,
  LayerId,
  Lock,
  Question,
} from "./voicing-types.ts";

/** Full assignments between two reports, so that a caller can stop in time. */
const solvesBetweenReports = 400;

/** Best of one span so far, by notes × (players + 1) + players. */
interface SpanBest {
  readonly value: Int32Array;
  readonly high: Int32Array;
  readonly low: Int32Array;
}

/** What part of the space is asked for. */
export interface SearchOptions {
  /** All voicings, only those with unbroken sections, or only interlocked ones; all when left out. */
  readonly layer?: LayerId;
  /** Exactly these sections sound, each with at least one player; any when left out. */
  readonly sections?: readonly SectionId[];
  /** Distinct notes at most; as many as players when left out. */
  readonly mostNotes?: Count;
}

interface Work {
  readonly question: Question;
  readonly instance: Instance;
  readonly limits: AssignmentLimits;
  readonly mostNotes: number;
  readonly lister: StackLister;
  readonly assigner: Assigner;
  readonly sectioned: SectionedAssigner | null;
  readonly coverage: CoverageBound;
  readonly stack: Int32Array;
  stacks: number;
  solved: number;
}

/** Pairs of highest and lowest candidate by span, narrow first. */
function spansOf(instance: Instance): readonly (readonly (readonly [number, number])[])[] {
  const spans: [number, number][][] = [];
  const { candidates, leadIndex, leadOnTop } = instance;
  for (let top = leadOnTop ? leadIndex : 0; top <= leadIndex; top++)
    for (let bottom = leadIndex; bottom < candidates.length; bottom++) {
      if (bottom <= top) continue;
      const span = candidates[top]! - candidates[bottom]!;
      (spans[span] ??= []).push([top, bottom]);
    }
  return spans;
}

function beginWork(question: Question, instance: Instance, options: SearchOptions): Work {
  const { layer = "free", sections } = options;
  const mostNotes = Math.min(options.mostNotes ?? instance.players.length, instance.players.length);
  const mustSound = sections ? new Int32Array(instance.sectionNames.length).fill(1) : null;
  return {
    question,
    instance,
    limits: { ...freeAssignment, sectionMustSound: mustSound },
    mostNotes,
    lister: createStackLister(instance, instance.playerCost, mostNotes),
    assigner: createAssigner(instance, instance.playerCost),
    sectioned:
      layer === "free"
        ? null
        : createSectionedAssigner(instance, instance.playerCost, layer, sections !== undefined),
    coverage: createCoverageBound(instance, instance.playerCost),
    stack: new Int32Array(instance.players.length + 1),
    stacks: 0,
    solved: 0,
  };
}

/** The question with everyone outside the asked sections resting. */
export function restrictedTo(
  question: Question,
  sections: readonly SectionId[] | undefined,
): Result<Question> {
  if (!sections) return ok(question);
  const outside = question.players.filter((player) => !sections.includes(player.section));
  const missing = sections.find(
    (section) => !question.players.some((player) => player.section === section),
  );
  if (missing) return fail("section-missing", `There are no ${missing} in the line-up.`);
  const locks: Lock[] = outside.map((player) => ({ playerId: player.id, sounding: "rest" }));
  return ok({ ...question, locks: [...question.locks, ...locks] });
}

/** Whether a stack may still improve a cell: its bound is below the best, or ties and comes first. */
function mayImprove(
  pool: StackPool,
  at: number,
  notes: number,
  counts: number,
  best: SpanBest,
  more: number,
): boolean {
  const row = at * counts;
  const to = notes * counts;
  for (let k = notes; k < counts; k++) {
    const plain = pool.bounds[row + k]!;
    const bound = plain === cannot ? cannot : plain + more;
    const value = best.value[to + k]!;
    if (bound < value) return true;
    if (
      bound === value &&
      bound !== cannot &&
      comesBefore(pool.high[at]!, pool.low[at]!, best.high[to + k]!, best.low[to + k]!)
    )
      return true;
  }
  return false;
}

function improve(best: SpanBest, to: number, value: number, high: number, low: number): void {
  const before = best.value[to]!;
  if (value > before) return;
  if (value === before && !comesBefore(high, low, best.high[to]!, best.low[to]!)) return;
  best.value[to] = value;
  best.high[to] = high;
  best.low[to] = low;
}

/** Solves one stack in full and enters what it gives into the cells. */
function solveStack(work: Work, pool: StackPool, at: number, notes: number, best: SpanBest): void {
  const players = work.instance.players.length;
  const counts = players + 1;
  const high = pool.high[at]!;
  const low = pool.low[at]!;
  readStack(high, low, work.stack);
  const base = pool.cost[at]! * chairScale;
  const to = notes * counts;
  work.solved++;
  work.assigner.solve(work.stack, notes, work.limits, players);
  const { values } = work.assigner;
  if (!work.sectioned) {
    for (let k = notes; k <= players; k++)
      if (values[k] !== cannot) improve(best, to + k, base + values[k]!, high, low);
    return;
  }
  for (let k = notes; k <= players; k++) {
    const limit = best.value[to + k]!;
    if (values[k] === cannot || base + values[k]! > limit) continue;
    const found = work.sectioned.best(
      work.stack,
      notes,
      k,
      limit === cannot ? cannot : limit - base,
    );
    if (found !== cannot) improve(best, to + k, base + found, high, low);
  }
}

/** For each number of players, the stack with the lowest bound: a good first guess. */
function seedsOf(pool: StackPool, notes: number, counts: number): readonly number[] {
  const seeds = new Set<number>();
  for (let k = notes; k < counts; k++) {
    let seed = -1;
    let least = cannot;
    for (let at = 0; at < pool.count; at++) {
      const bound = pool.bounds[at * counts + k]!;
      if (bound < least) {
        least = bound;
        seed = at;
      }
    }
    if (seed >= 0) seeds.add(seed);
  }
  return [...seeds];
}

/** Stacks in order of their bound for everyone playing: likely winners first. */
function likelyFirst(pool: StackPool, counts: number): Float64Array {
  const order = new Float64Array(pool.count);
  for (let at = 0; at < pool.count; at++) {
    let bound = pool.bounds[at * counts + counts - 1]!;
    if (bound === cannot) bound = pool.cost[at]! * chairScale;
    order[at] = bound * 4194304 + at;
  }
  return order.sort();
}

function* searchPool(
  work: Work,
  pool: StackPool,
  notes: number,
  best: SpanBest,
): Generator<undefined, void> {
  const counts = work.instance.players.length + 1;
  work.stacks += pool.count;
  const isDone = new Uint8Array(pool.count);
  for (const seed of seedsOf(pool, notes, counts)) {
    solveStack(work, pool, seed, notes, best);
    isDone[seed] = 1;
  }
  let sinceReport = 0;
  for (const key of likelyFirst(pool, counts)) {
    const at = key % 4194304;
    if (isDone[at] === 1 || !mayImprove(pool, at, notes, counts, best, 0)) continue;
    readStack(pool.high[at]!, pool.low[at]!, work.stack);
    const more = work.coverage(work.stack, notes);
    if (more === cannot || !mayImprove(pool, at, notes, counts, best, more)) continue;
    solveStack(work, pool, at, notes, best);
    if (++sinceReport % (work.sectioned ? 20 : solvesBetweenReports) === 0) yield undefined;
  }
}

/** Who plays what in the best stack of each cell of a span. */
function cellsOfSpan(work: Work, span: number, best: SpanBest): AtlasCell[] {
  const players = work.instance.players.length;
  const counts = players + 1;
  const cells: AtlasCell[] = [];
  for (let notes = 2; notes <= work.mostNotes; notes++)
    for (let k = notes; k <= players; k++) {
      const to = notes * counts + k;
      if (best.value[to] === cannot) continue;
      readStack(best.high[to]!, best.low[to]!, work.stack);
      const key = { span, notes, players: k };
      cells.push(cellFrom(work, key, best.value[to]!));
    }
  return cells;
}

function cellFrom(work: Work, key: CellKey, value: number): AtlasCell {
  const { assigner, sectioned, stack } = work;
  const places = sectioned
    ? sectioned.placesFor(stack, key.notes, key.players)
    : assigner.placesFor(stack, key.notes, work.limits, key.players);
  return toCell(work.question, work.instance, key, value, stack, places, "harmony");
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
  const built = buildInstance(restricted.value);
  return built.ok ? ok(searchInstance(restricted.value, built.value, options)) : built;
}

function* searchInstance(
  question: Question,
  instance: Instance,
  options: SearchOptions,
): Generator<AtlasProgress, Atlas> {
  const { layer = "free" } = options;
  const spans = spansOf(instance);
  const groups = spans.filter((pairs) => pairs !== undefined).length + 1;
  const work = beginWork(question, instance, options);
  const cells: AtlasCell[] = hasLines(options) ? [...lineCells(question, instance)] : [];
  let groupsDone = 1;
  yield { groupsDone, groups, cells: [...cells] };
  for (let span = 1; span < spans.length; span++) {
    const pairs = spans[span];
    if (!pairs) continue;
    const best = emptyBest(instance.players.length + 1);
    for (const pair of pairs)
      for (const _ of searchPair(work, pair, best)) yield { groupsDone, groups, cells: [] };
    const found = cellsOfSpan(work, span, best);
    cells.push(...found);
    yield { groupsDone: ++groupsDone, groups, cells: found };
  }
  return { layer, cells: sortedCells(cells), counts: countsOf(work, cells), emptiedBy: [] };
}

/** Lines have no sections to keep apart: they belong to the free and the by-section layer. */
function hasLines(options: SearchOptions): boolean {
  return options.layer !== "crossed" && options.sections === undefined;
}

/** All stacks between one highest and one lowest note, a pool at a time. */
function* searchPair(
  work: Work,
  [top, bottom]: readonly [number, number],
  best: SpanBest,
): Generator<undefined, void> {
  const { lister } = work;
  lister.begin(top, bottom);
  for (let full = lister.fill(); full >= 0; full = lister.fill()) {
    yield* searchPool(work, lister.pools[full]!, full, best);
    lister.empty(full);
    yield undefined;
  }
  for (let notes = 2; notes <= work.mostNotes; notes++)
    if (lister.pools[notes]!.count > 0) yield* searchPool(work, lister.pools[notes]!, notes, best);
}

function emptyBest(counts: number): SpanBest {
  return {
    value: new Int32Array(counts * counts).fill(cannot),
    high: new Int32Array(counts * counts),
    low: new Int32Array(counts * counts),
  };
}

function countsOf(work: Work, cells: readonly AtlasCell[]): AtlasCounts {
  return {
    stacks: work.stacks,
    pruned: work.stacks - work.solved,
    solved: work.solved,
    cells: cells.length,
  };
}

function sortedCells(cells: readonly AtlasCell[]): readonly AtlasCell[] {
  return [...cells].sort(
    (a, b) => a.key.span - b.key.span || a.key.notes - b.key.notes || a.key.players - b.key.players,
  );
}

/**
 * The best voicings of one cell, each of another stack, best first.
 * @param question - the question
 * @param key - the cell
 * @param count - how many at most
 * @param options - layer and sections
 * @returns up to `count` cells' worth of voicings, lines after the others; empty where the cell
 *   is out of reach
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
  const work = beginWork(asked, instance, { ...options, mostNotes: key.notes });
  const players = key.players - (asked.octaveAbovePlayer === undefined ? 0 : 1);
  const kept: Kept[] = [];
  const { lister } = work;
  for (const [top, bottom] of spansOf(instance)[key.span] ?? []) {
    lister.begin(top, bottom);
    for (let full = lister.fill(); full >= 0; full = lister.fill()) {
      if (full === key.notes) keepBest(work, key.notes, players, count, kept);
      lister.empty(full);
    }
    keepBest(work, key.notes, players, count, kept);
  }
  const cells = kept.map(({ value, high, low }) => {
    readStack(high, low, work.stack);
    return cellFrom(work, { ...key, players }, value);
  });
  const lines = hasLines(options)
    ? lineCells(asked, instance).filter((cell) => sameCell(cell.key, key))
    : [];
  return ok([...cells, ...lines].slice(0, Math.max(count, lines.length)));
}

interface Kept {
  readonly value: number;
  readonly high: number;
  readonly low: number;
}

function sameCell(a: CellKey, b: CellKey): boolean {
  return a.span === b.span && a.notes === b.notes && a.players === b.players;
}

function keepBest(work: Work, notes: number, players: number, count: number, kept: Kept[]): void {
  const pool = work.lister.pools[notes];
  if (!pool) return;
  const counts = work.instance.players.length + 1;
  if (players >= counts) return;
  const order = Float64Array.from({ length: pool.count }, (_, at) => {
    return pool.bounds[at * counts + players]! * 4194304 + at;
  }).sort();
  for (const code of order) {
    const at = code % 4194304;
    const bound = pool.bounds[at * counts + players]!;
    const worst = kept.length < count ? cannot : kept[kept.length - 1]!.value;
    if (bound === cannot || bound > worst) return;
    readStack(pool.high[at]!, pool.low[at]!, work.stack);
    const base = pool.cost[at]! * chairScale;
    const value = valueOf(work, notes, players, worst === cannot ? cannot : worst - base);
    if (value === cannot || base + value > worst) continue;
    kept.push({ value: base + value, high: pool.high[at]!, low: pool.low[at]! });
    kept.sort((a, b) => a.value - b.value || (comesBefore(a.high, a.low, b.high, b.low) ? -1 : 1));
    if (kept.length > count) kept.pop();
  }
}

function valueOf(work: Work, notes: number, players: number, limit: number): number {
  work.assigner.solve(work.stack, notes, work.limits, players);
  const free = work.assigner.values[players]!;
  if (!work.sectioned || free === cannot || free > limit) return free;
  return work.sectioned.best(work.stack, notes, players, limit);
}
