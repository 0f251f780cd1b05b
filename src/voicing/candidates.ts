import { ok, quantity, type Count, type Result, type Semitones } from "../base/index.ts";
import { createAssigner } from "./assignment.ts";
import { freeAssignment } from "./assignment-network.ts";
import type { Assigner } from "./assignment-types.ts";
import { AssignmentVariants } from "./assignment-variants.ts";
import type { Candidates, CandidateWish } from "./candidate-types.ts";
import { CandidateRows } from "./candidate-rows.ts";
import { createCoverageBound, type CoverageBound } from "./coverage-bound.ts";
import { builtInstance } from "./built-instance.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { lineCells } from "./lines.ts";
import { chairScale } from "./ranking.ts";
import { spansOf, type Ends } from "./spans.ts";
import { indicesByBound } from "./bound-order.ts";
import { StackLister } from "./stack-lister.ts";
import type { StackPool } from "./stack-pool.ts";
import { comesBefore, readStack, type SetWord } from "./stack-sets.ts";
import type { AtlasCell, Question } from "./voicing-types.ts";

/** A cell of the atlas that is worth opening. */
interface WishedCell {
  readonly texture: number;
  readonly span: number;
  readonly notes: number;
  readonly players: number;
}

/** One stack of a cell with its value. */
interface Kept {
  readonly value: number;
  readonly high: SetWord;
  readonly low: SetWord;
}

interface Work {
  readonly instance: Instance;
  readonly wish: CandidateWish;
  readonly spans: ReadonlyMap<Semitones, readonly Ends[]>;
  readonly assigner: Assigner;
  readonly coverage: CoverageBound;
  readonly variants: AssignmentVariants;
  readonly stack: Int32Array;
  readonly rows: CandidateRows;
  /** Span and notes of groups that hold no stack, as one number. */
  readonly empty: Set<number>;
  /** Listers by the numbers of notes they list, as one number. */
  readonly listers: Map<number, StackLister>;
}

/**
 * Voicings of a question near a wished texture: cells in the order of their distance from it, of each
 * cell the best stacks, of each stack several assignments. Costs are told against the best voicing of
 * the same cell, which is proven as the atlas proves it.
 * @param question - the question
 * @param wish - what texture, how many
 * @returns rows, more than asked where the last cells give more, fewer where the atlas ends; or the
 *   problem with the question
 */
export function voicingCandidates(question: Question, wish: CandidateWish): Result<Candidates> {
  const built = builtInstance(question);
  if (!built.ok) return built;
  const instance = built.value;
  const work: Work = {
    instance,
    wish,
    spans: spansOf(instance),
    assigner: createAssigner(instance, instance.playerCost),
    coverage: createCoverageBound(instance, instance.playerCost),
    variants: new AssignmentVariants(instance, instance.playerCost),
    stack: new Int32Array(instance.players.length + 1),
    rows: new CandidateRows(question, instance),
    empty: new Set(),
    listers: new Map(),
  };
  openCells(work, wishedCells(work));
  return ok(work.rows.finish());
}

/** Keys of all cells that may exist, nearest to the wish first, then narrow before wide. */
function wishedCells({ instance, wish, spans }: Work): Float64Array {
  const keys: number[] = [];
  const most = instance.players.length;
  for (const span of spans.keys())
    for (let notes = 2; notes <= Math.min(most, span + 1); notes++)
      for (let players = notes; players <= most; players++) {
        const texture = wish.textureCost(span, notes, players);
        keys.push(((texture * cellBase + span) * cellBase + notes) * cellBase + players);
      }
  // Sorted as numbers: many thousands of cells, of which a few are opened.
  return Float64Array.from(keys).sort();
}

/** Above every span in semitones, every number of notes and of players. */
const cellBase = 128;

function cellOf(key: number): WishedCell {
  const digit = (place: number): number => Math.floor(key / cellBase ** place) % cellBase;
  const texture = Math.floor(key / cellBase ** 3);
  return { texture, span: digit(2), notes: digit(1), players: digit(0) };
}

const groupOf = ({ span, notes }: WishedCell): number => 64 * span + notes;

/** Opens cells in batches until there are rows and cells enough. */
function openCells(work: Work, cells: Float64Array): void {
  const { wish, rows, empty } = work;
  const inCell = wish.stacksInCell * wish.assignmentsOfStack;
  let at = 0;
  let opened = 0;
  while (at < cells.length && (rows.count < wish.rows || opened < wish.cells)) {
    const missing = Math.ceil((wish.rows - rows.count) / inCell);
    const room = Math.max(1, missing, wish.cells - opened);
    const batch: WishedCell[] = [];
    for (; at < cells.length && batch.length < room; at++) {
      const cell = cellOf(cells[at]!);
      if (!empty.has(groupOf(cell))) batch.push(cell);
    }
    opened += openBatch(work, batch);
  }
}

function openBatch(work: Work, batch: readonly WishedCell[]): number {
  const bySpan = new Map<number, WishedCell[]>();
  for (const cell of batch) bySpan.set(cell.span, [...(bySpan.get(cell.span) ?? []), cell]);
  let opened = 0;
  for (const [span, cells] of bySpan) opened += openSpan(work, span, cells);
  return opened;
}

function listerFor({ instance, listers }: Work, least: number, most: number): StackLister {
  const key = 64 * least + most;
  const found = listers.get(key) ?? new StackLister(instance, instance.playerCost, { least, most });
  listers.set(key, found);
  return found;
}

/** Opens the cells of one span; returns how many hold a voicing. */
function openSpan(work: Work, span: number, cells: readonly WishedCell[]): number {
  const { spans, empty } = work;
  const notes = cells.map((cell) => cell.notes);
  const lister = listerFor(work, Math.min(...notes), Math.max(...notes));
  const keeping = cells.map((cell) => ({ cell, kept: [] as Kept[] }));
  const ofNotes = (count: number): typeof keeping =>
    keeping.filter(({ cell }) => cell.notes === count);
  const filled = new Set<number>();
  const keep = (count: number): void => {
    const pool = lister.pools[count]!;
    if (pool.count > 0) filled.add(count);
    if (pool.count > 0) keepBest(work, pool, count, ofNotes(count));
  };
  for (const { top, bottom } of spans.get(quantity<Semitones>(span)) ?? []) {
    lister.begin(top, bottom);
    for (let full = lister.fill(); full >= 0; full = lister.fill()) {
      keep(full);
      lister.empty(full);
    }
    for (const count of new Set(notes)) keep(count);
  }
  for (const count of new Set(notes)) if (!filled.has(count)) empty.add(64 * span + count);
  addRows(work, keeping);
  return keeping.filter(({ kept }) => kept.length > 0).length;
}

/** The best stacks of some cells with the same span and notes so far. */
type Keeping = readonly { readonly cell: WishedCell; readonly kept: Kept[] }[];

/** Goes through the stacks of a pool by their bound and keeps the best of each cell. */
function keepBest(work: Work, pool: StackPool, notes: number, into: Keeping): void {
  const { instance, coverage, stack, assigner, wish } = work;
  const counts = instance.players.length + 1;
  const room = wish.stacksInCell;
  const first = into[0]!.cell.players;
  const most = Math.max(...into.map(({ cell }) => cell.players));
  const mayEnter = (at: number, more: number): boolean =>
    into.some(({ cell, kept }) => {
      const bound = pool.bounds[at * counts + cell.players]!;
      return bound !== cannot && (kept.length < room || bound + more <= kept[0]!.value);
    });
  for (const at of likelyFirst(pool, counts, first)) {
    if (!mayEnter(at, 0)) continue;
    readStack(pool.high[at]!, pool.low[at]!, stack);
    const more = coverage(stack, notes);
    if (more === cannot || !mayEnter(at, more)) continue;
    assigner.solve({ stack, notes, limits: freeAssignment }, most);
    const base = pool.cost[at]! * chairScale;
    for (const { cell, kept } of into) {
      const value = assigner.values[cell.players]!;
      if (value === cannot) continue;
      insert(kept, room, { value: base + value, high: pool.high[at]!, low: pool.low[at]! });
    }
  }
}

/** Stacks by their bound for one number of players. */
function likelyFirst(pool: StackPool, counts: number, players: number): Float64Array {
  return indicesByBound(pool.count, (at) => pool.bounds[at * counts + players]!);
}

function insert(into: Kept[], room: number, found: Kept): void {
  const isBefore = (other: Kept): boolean =>
    found.value < other.value ||
    (found.value === other.value && comesBefore(found.high, found.low, other.high, other.low));
  const at = into.findIndex(isBefore);
  into.splice(at < 0 ? into.length : at, 0, found);
  if (into.length > room) into.pop();
}

/** Enters the stacks of cells with their cheapest assignments; each stack is assigned once. */
function addRows(work: Work, keeping: Keeping): void {
  const { assigner, stack } = work;
  const byStack = new Map<string, { readonly cell: WishedCell; readonly over: number }[]>();
  const sets = new Map<string, readonly [SetWord, SetWord]>();
  for (const { cell, kept } of keeping) {
    const best = Math.floor((kept[0]?.value ?? 0) / chairScale);
    for (const { value, high, low } of kept) {
      const key = `${high} ${low}`;
      const over = Math.floor(value / chairScale) - best;
      byStack.set(key, [...(byStack.get(key) ?? []), { cell, over }]);
      sets.set(key, [high, low]);
    }
  }
  for (const [key, uses] of byStack) {
    const [high, low] = sets.get(key)!;
    const notes = readStack(high, low, stack);
    const wanted = uses.map(({ cell }) => cell.players).sort((a, b) => a - b);
    const places = assigner.placesFor({ stack, notes, limits: freeAssignment }, wanted);
    for (const { cell, over } of uses) addStack(work, cell, over, places.get(cell.players));
  }
}

function addStack(
  work: Work,
  { notes, texture }: WishedCell,
  over: number,
  places: Int32Array | undefined,
): void {
  const { rows, stack, variants, wish } = work;
  if (!places) throw new RangeError("a stack of the cell has no assignment");
  rows.add(stack, places, over, texture);
  for (const other of variants.of({ stack, notes, places }, wish.assignmentsOfStack - 1))
    rows.add(stack, other.places, over + other.more, texture);
}

/**
 * Unison or octave lines of a question near a wished texture, several assignments of each.
 * @param question - the question
 * @param wish - what texture, how many; density does not matter to a line
 * @param kind - everyone on the melody's own pitch, or octaves below it as well
 * @returns rows; none in unison when nobody else reaches the melody, never none where it can be
 *   played; or the problem with the question
 */
export function lineCandidates(
  question: Question,
  wish: CandidateWish,
  kind: "unison" | "octaves",
): Result<Candidates> {
  const built = builtInstance(question);
  if (!built.ok) return built;
  const instance = built.value;
  const cells = lineCells(question, instance).filter(
    ({ key }) => kind === "octaves" || key.notes === 1,
  );
  const textureOf = ({ key }: AtlasCell): Count =>
    wish.textureCost(key.span, key.notes, key.players);
  const ordered = [...cells].sort(
    (a, b) =>
      textureOf(a) - textureOf(b) ||
      a.key.span - b.key.span ||
      a.key.notes - b.key.notes ||
      a.key.players - b.key.players,
  );
  const rows = new CandidateRows(question, instance);
  const nothing = new Int32Array(instance.candidates.length * (instance.players.length + 1));
  const plain: Instance = { ...instance, sharedNoteCost: nothing, sharedInSectionCost: nothing };
  const variants = new AssignmentVariants(plain, instance.lineCost);
  for (const [opened, cell] of ordered.entries()) {
    if (rows.count >= wish.rows && opened >= wish.cells) break;
    addLine(rows, variants, instance, cell, { texture: textureOf(cell), wish });
  }
  return ok(rows.finish());
}

function addLine(
  into: CandidateRows,
  variants: AssignmentVariants,
  instance: Instance,
  cell: AtlasCell,
  { texture, wish }: { readonly texture: Count; readonly wish: CandidateWish },
): void {
  const sounding = instance.questionIndex.map((index) => cell.pitches[index] ?? 0);
  const pitches = [...new Set(sounding)].filter((pitch) => pitch > 0).sort((a, b) => b - a);
  const stack = Int32Array.from(pitches, (pitch) => instance.candidates.indexOf(pitch));
  const places = Int32Array.from(sounding, (pitch) => (pitch === 0 ? -1 : pitches.indexOf(pitch)));
  into.add(stack, places, 0, texture);
  const asked = { stack, notes: pitches.length, places };
  const most = wish.stacksInCell * wish.assignmentsOfStack - 1;
  for (const other of variants.of(asked, most)) into.add(stack, other.places, other.more, texture);
}
