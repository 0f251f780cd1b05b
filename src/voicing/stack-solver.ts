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
   * @returns to be added to all its bounds; `cannot` when a note has nobody
   */
  beyondBounds(pool: StackPool, at: Count, notes: Count): Count {
    readStack(pool.high[at]!, pool.low[at]!, this.stack);
    return this.coverage(this.stack, notes);
  }

  /** Solves one stack for every number of players and enters what it gives. */
  solveInto(best: SpanBest, pool: StackPool, at: Count, notes: Count): void {
    const { sectioned, stack, limits, assigner } = this;
    const players = this.instance.players.length;
    const high = pool.high[at]!;
    const low = pool.low[at]!;
    const base = pool.cost[at]! * chairScale;
    readStack(high, low, stack);
    this.solved++;
    assigner.solve({ stack, notes, limits }, players);
    let isLoaded = false;
    for (let k = notes; k <= players; k++) {
      let value = assigner.values[k]!;
      if (value === cannot) continue;
      if (sectioned) {
        const limit = best.valueAt(notes, k);
        if (base + value > limit) continue;
        if (!isLoaded) sectioned.load(stack, notes);
        isLoaded = true;
        value = sectioned.leastFor(k, limit === cannot ? cannot : limit - base);
        if (value === cannot) continue;
      }
      best.improve(notes, k, base + value, high, low);
    }
  }

  /**
   * Solves one stack for one number of players.
   * @returns its whole value, `cannot` when there is none up to the limit
   */
  valueOf(pool: StackPool, at: Count, key: CellKey, limit: Count): Count {
    const { sectioned, stack, limits, assigner } = this;
    const { notes, players } = key;
    const base = pool.cost[at]! * chairScale;
    readStack(pool.high[at]!, pool.low[at]!, stack);
    this.solved++;
    assigner.solve({ stack, notes, limits }, players);
    let value = assigner.values[players]!;
    if (value === cannot || base + value > limit) return cannot;
    if (sectioned) {
      sectioned.load(stack, notes);
      value = sectioned.leastFor(players, limit === cannot ? cannot : limit - base);
    }
    return value === cannot ? cannot : base + value;
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
    if (sectioned) sectioned.load(stack, notes);
    const wanted = keys.map((key) => key.players);
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
}
