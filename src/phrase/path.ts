import type { Count, SoundingMidi } from "../base/index.ts";
import type { Player } from "../band/index.ts";
import { moveCosts } from "./line-cost-table.ts";
import type { MoveMemory, MoveSituation, PitchOrRest } from "./move-cost.ts";
import type { Stage } from "./stages.ts";

/** What lies between two moments. */
export interface Step {
  readonly situation: MoveSituation;
  readonly leadBefore: SoundingMidi;
  readonly leadAfter: SoundingMidi;
}

/** The stage after the one being solved, with the best way on from each of its rows. */
export interface Solved {
  /** Own cost and the way on, by row. */
  readonly best: Int32Array;
  /** Row of the stage after it, by row; −1 at the end. */
  readonly next: Int32Array;
}

/** What a row costs by itself. */
function ownCost(stage: Stage, row: number): number {
  return stage.voicing[row]! + stage.texture[row]! + stage.chairs[row]!;
}

/**
 * Solves the last stage: nothing comes after it.
 * @param stage - its voicings
 * @returns own costs
 */
export function solveLast(stage: Stage): Solved {
  const best = Int32Array.from({ length: stage.count }, (_, row) => ownCost(stage, row));
  return { best, next: new Int32Array(stage.count).fill(-1) };
}

/** Moves of every player as numbers: pitches numbered by player, costs by pair. */
interface StepTable {
  /** rows × players: place of the row's pitch among the player's pitches. */
  readonly from: Uint8Array;
  readonly to: Uint8Array;
  /** For each player, costs from × to one behind the other, and where they start. */
  readonly costs: Int16Array;
  readonly starts: Int32Array;
  readonly widths: Int32Array;
  /** Start of each player's part in a row of costs. */
  readonly offsets: Int32Array;
  readonly rowLength: Count;
}

/** Distinct pitches of a player in a stage, and the place of each row's pitch among them. */
function numbered(
  stage: Stage,
  width: number,
  player: number,
  into: Uint8Array,
): readonly PitchOrRest[] {
  const placeOf = new Int16Array(128).fill(-1);
  const pitches: PitchOrRest[] = [];
  for (let row = 0; row < stage.count; row++) {
    const pitch = stage.pitches[row * width + player]!;
    if (placeOf[pitch]! < 0) {
      placeOf[pitch] = pitches.length;
      pitches.push(pitch as PitchOrRest);
    }
    into[row * width + player] = placeOf[pitch]!;
  }
  return pitches;
}

function stepTable(
  players: readonly Player[],
  before: Stage,
  after: Stage,
  step: Step,
  memory: MoveMemory,
): StepTable {
  const width = players.length;
  const from = new Uint8Array(before.count * width);
  const to = new Uint8Array(after.count * width);
  const starts = new Int32Array(width);
  const widths = new Int32Array(width);
  const offsets = new Int32Array(width);
  const blocks: Int16Array[] = [];
  let start = 0;
  let offset = 0;
  players.forEach((player, p) => {
    const starting = numbered(before, width, p, from);
    const ending = numbered(after, width, p, to);
    const block = memory.between(player, starting, ending, step.situation);
    addLeadChanges(block, starting, ending, step);
    blocks.push(block);
    starts[p] = start;
    widths[p] = ending.length;
    offsets[p] = offset;
    start += block.length;
    offset += ending.length;
  });
  const costs = new Int16Array(start);
  blocks.forEach((block, p) => costs.set(block, starts[p]!));
  return { from, to, costs, starts, widths, offsets, rowLength: offset };
}

/** A player who takes the melody over or gives it up while going on. */
function addLeadChanges(
  intoBlock: Int16Array,
  from: readonly PitchOrRest[],
  to: readonly PitchOrRest[],
  { leadBefore, leadAfter, situation }: Step,
): void {
  if (situation.isAfterRest) return;
  from.forEach((start, f) =>
    to.forEach((end, t) => {
      if (start === 0 || end === 0 || (start === leadBefore) === (end === leadAfter)) return;
      const at = f * to.length + t;
      intoBlock[at] = intoBlock[at]! + moveCosts.leadChange;
    }),
  );
}

/** Rows in order of what they and the way on cost, equals by row. */
function byBest({ best }: Solved): Int32Array {
  const keys = Float64Array.from(best, (value, row) => value * 65536 + row).sort();
  return Int32Array.from(keys, (key) => key % 65536);
}

/**
 * Solves a stage exactly: for each of its rows the cheapest way on through the stages after it. Rows
 * of the next stage are tried in order of what remains from there, so that most need not be looked
 * at; equals go to the lower row.
 * @param players - the line-up
 * @param stage - voicings of the moment
 * @param after - voicings of the moment after it
 * @param solved - the best way on from those
 * @param step - what lies between
 * @param memory - costs of moves worked out so far
 * @returns the best way on from each row
 * @source dynamic programming: R. Bellman, Dynamic Programming (1957)
 */
export function solveStage(
  players: readonly Player[],
  stage: Stage,
  after: Stage,
  solved: Solved,
  step: Step,
  memory: MoveMemory,
): Solved {
  const table = stepTable(players, stage, after, step, memory);
  const best = new Int32Array(stage.count);
  const next = new Int32Array(stage.count);
  const order = byBest(solved);
  const row = new Int16Array(table.rowLength);
  const leastFrom = new Int32Array(players.length + 1);
  const width = players.length;
  const shifted = shiftedRows(table, after, width);
  for (let a = 0; a < stage.count; a++) {
    const least = loadRow(table, a, leastFrom, row);
    if (stage.into) {
      const b = stage.into[a]!;
      best[a] = ownCost(stage, a) + solved.best[b]! + sumOf(row, shifted, b * width, width);
      next[a] = b;
      continue;
    }
    let cheapest = 0x3fffffff;
    let chosen = -1;
    for (let n = 0; n < order.length; n++) {
      const b = order[n]!;
      const onward = solved.best[b]!;
      if (onward + least > cheapest) break;
      const total = onward + sumUpTo(row, shifted, b * width, leastFrom, cheapest - onward);
      if (total < cheapest || (total === cheapest && b < chosen)) {
        cheapest = total;
        chosen = b;
      }
    }
    best[a] = ownCost(stage, a) + cheapest;
    next[a] = chosen;
  }
  return { best, next };
}

/** The next stage's numbers with each player's offset added: places in a loaded row. */
function shiftedRows({ to, offsets }: StepTable, after: Stage, width: number): Uint16Array {
  const shifted = new Uint16Array(after.count * width);
  for (let at = 0; at < shifted.length; at++) shifted[at] = to[at]! + offsets[at % width]!;
  return shifted;
}

/**
 * Lays the costs of all moves from one row side by side, and writes the least that the players from
 * each one on can cost; returns the least of all.
 */
function loadRow(table: StepTable, a: number, intoLeast: Int32Array, intoRow: Int16Array): number {
  const { from, costs, starts, widths, offsets } = table;
  const width = widths.length;
  for (let p = width - 1; p >= 0; p--) {
    const count = widths[p]!;
    const start = starts[p]! + from[a * width + p]! * count;
    let cheapest = 0x7fff;
    for (let t = 0; t < count; t++) {
      const cost = costs[start + t]!;
      intoRow[offsets[p]! + t] = cost;
      if (cost < cheapest) cheapest = cost;
    }
    intoLeast[p] = intoLeast[p + 1]! + cheapest;
  }
  return intoLeast[0]!;
}

function sumOf(row: Int16Array, places: Uint16Array, from: number, width: number): number {
  let sum = 0;
  for (let p = 0; p < width; p++) sum += row[places[from + p]!]!;
  return sum;
}

/** Players added between two looks at the limit. */
const playersBetweenLooks = 3;

/** The sum, or some number above the limit as soon as it must lie above it. */
function sumUpTo(
  row: Int16Array,
  places: Uint16Array,
  from: number,
  leastFrom: Int32Array,
  limit: number,
): number {
  const width = leastFrom.length - 1;
  let sum = 0;
  let p = 0;
  while (p < width) {
    const end = Math.min(width, p + playersBetweenLooks);
    for (; p < end; p++) sum += row[places[from + p]!]!;
    if (sum + leastFrom[p]! > limit) return limit + 1;
  }
  return sum;
}

/**
 * The best path through solved stages, in order of time.
 * @param solved - one for each stage
 * @returns row of each stage; the lowest rows among equals, first stage first
 */
export function pathThrough(solved: readonly Solved[]): readonly Count[] {
  const [first] = solved;
  if (!first) return [];
  let row = 0;
  first.best.forEach((value, at) => {
    if (value < first.best[row]!) row = at;
  });
  return solved.map(({ next }) => {
    const here = row;
    row = next[row]!;
    return here;
  });
}
