import type { Count } from "../base/index.ts";
import { createAssigner } from "./assignment.ts";
import { freeAssignment } from "./assignment-network.ts";
import type { Assigner, AssignmentLimits } from "./assignment-types.ts";
import { toCell } from "./cell.ts";
import { createCoverageBound, type CoverageBound } from "./coverage-bound.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { chairScale } from "./ranking.ts";
import type { SearchOptions } from "./search-options.ts";
import { SectionedAssigner } from "./sectioned-assignment.ts";
import type { SpanBest } from "./span-best.ts";
import type { StackPool } from "./stack-pool.ts";
import { readStack, type SetWord } from "./stack-sets.ts";
import type { AtlasCell, CellKey, Question } from "./voicing-types.ts";

/** Solves stacks in one layer of one question. */
export class StackSolver {
  /** Stacks whose players were assigned in full so far. */
  solved: Count = 0;
  private readonly question: Question;
  private readonly instance: Instance;
  private readonly limits: AssignmentLimits;
  private readonly assigner: Assigner;
  private readonly sectioned: SectionedAssigner | null;
  private readonly coverage: CoverageBound;
  private readonly stack: Int32Array;

  /**
   * @param question - the question
   * @param instance - the same in numbers
   * @param options - layer and sections
   */
  constructor(question: Question, instance: Instance, options: SearchOptions) {
    const { layer = "free", sections } = options;
    const { playerCost, sectionNames, players } = instance;
    const mustSound = sections ? new Int32Array(sectionNames.length).fill(1) : null;
    this.question = question;
    this.instance = instance;
    this.limits = { ...freeAssignment, sectionMustSound: mustSound };
    this.assigner = createAssigner(instance, playerCost);
    this.sectioned =
      layer === "free"
        ? null
        : new SectionedAssigner(instance, playerCost, layer, sections !== undefined);
    this.coverage = createCoverageBound(instance, playerCost);
    this.stack = new Int32Array(players.length + 1);
  }

  /** Whether sections are kept apart, which takes longer for each stack. */
  get isSectioned(): boolean {
    return this.sectioned !== null;
  }

  /**
   * What a stack costs at least beyond its bounds, because every note needs a player of its own.
   * @param pool - stacks of one number of notes
   * @param at - the stack
   * @param notes - its notes
   * @returns to be added to all its bounds; `cannot` when a note has nobody
   */
  beyondBounds(pool: StackPool, at: Count, notes: Count): Count {
    readStack(pool.high[at]!, pool.low[at]!, this.stack);
    return this.coverage(this.stack, notes);
  }

  /**
   * Solves one stack for every number of players and enters what it gives.
   * @param best - where to enter it
   * @param pool - stacks of one number of notes
   * @param at - the stack
   * @param notes - its notes
   */
  solveInto(best: SpanBest, pool: StackPool, at: Count, notes: Count): void {
    const { assigner, sectioned } = this;
    const players = this.instance.players.length;
    const high = pool.high[at]!;
    const low = pool.low[at]!;
    const base = pool.cost[at]! * chairScale;
    this.take(high, low, notes, players);
    for (let k = notes; k <= players; k++) {
      const value = sectioned
        ? sectioned.leastFor(k, roomUnder(best.valueAt(notes, k), base))
        : assigner.values[k]!;
      if (value !== cannot) best.improve(notes, k, base + value, high, low);
    }
  }

  /**
   * Solves one stack for one number of players.
   * @param pool - stacks of one number of notes
   * @param at - the stack
   * @param key - notes and players
   * @param limit - values above are of no interest
   * @returns its whole value, `cannot` when there is none up to the limit
   */
  valueOf(pool: StackPool, at: Count, key: CellKey, limit: Count): Count {
    const { assigner, sectioned } = this;
    const { notes, players } = key;
    const base = pool.cost[at]! * chairScale;
    this.take(pool.high[at]!, pool.low[at]!, notes, players);
    const value = sectioned
      ? sectioned.leastFor(players, roomUnder(limit, base))
      : assigner.values[players]!;
    return value === cannot || base + value > limit ? cannot : base + value;
  }

  /**
   * The cells that one stack is the best of.
   * @param set - the stack, as two words
   * @param keys - the cells, players rising
   * @param valueOfKey - value of each
   * @returns cells with who plays what
   */
  cellsOf(
    [high, low]: readonly [SetWord, SetWord],
    keys: readonly CellKey[],
    valueOfKey: (key: CellKey) => Count,
  ): readonly AtlasCell[] {
    const { question, instance, stack, limits, sectioned } = this;
    const notes = readStack(high, low, stack);
    const wanted = keys.map((key) => key.players);
    if (sectioned) sectioned.load(stack, notes, Math.max(...wanted));
    const free = sectioned ? null : this.assigner.placesFor({ stack, notes, limits }, wanted);
    return keys.map((key) => {
      const places = free?.get(key.players) ?? sectioned?.placesFor(key.players);
      if (!places) throw new RangeError("a cell without an assignment");
      return toCell(question, instance, {
        key,
        value: valueOfKey(key),
        stack,
        places,
        family: "harmony",
      });
    });
  }

  /** Reads a stack and has it worked out for up to so many players. */
  private take(high: SetWord, low: SetWord, notes: Count, players: Count): void {
    const { stack, limits } = this;
    readStack(high, low, stack);
    this.solved++;
    if (this.sectioned) this.sectioned.load(stack, notes, players);
    else this.assigner.solve({ stack, notes, limits }, players);
  }
}

/** What is left of a limit when so much is spent. */
function roomUnder(limit: Count, spent: Count): Count {
  return limit === cannot ? cannot : limit - spent;
}
