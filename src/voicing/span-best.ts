import type { Count } from "../base/index.ts";
import { cannot } from "./instance-types.ts";
import type { StackPool } from "./stack-pool.ts";
import { comesBefore, type SetWord } from "./stack-sets.ts";

/**
 * The best of one span so far, for each number of notes and of players: the least value, and of
 * the stacks that reach it the one with the higher notes first.
 */
export class SpanBest {
  private readonly counts: Count;
  private readonly value: Int32Array;
  private readonly high: Int32Array;
  private readonly low: Int32Array;

  /** @param counts - players + 1 */
  constructor(counts: Count) {
    this.counts = counts;
    this.value = new Int32Array(counts * counts).fill(cannot);
    this.high = new Int32Array(counts * counts);
    this.low = new Int32Array(counts * counts);
  }

  /**
   * Least value so far.
   * @param notes - distinct notes
   * @param players - sounding players
   * @returns cost · chairScale + chair cost, `cannot` when there is none
   */
  valueAt(notes: Count, players: Count): Count {
    return this.value[notes * this.counts + players]!;
  }

  /**
   * The stack that gives it.
   * @param notes - distinct notes
   * @param players - sounding players
   * @returns its set of candidates in two words
   */
  stackAt(notes: Count, players: Count): readonly [high: SetWord, low: SetWord] {
    const at = notes * this.counts + players;
    return [this.high[at]!, this.low[at]!];
  }

  /**
   * Whether a stack may still improve a cell: its bound is below the best, or ties and comes first.
   * @param pool - stacks of that number of notes
   * @param at - the stack
   * @param notes - its notes
   * @param more - what to add to all its bounds
   */
  mayImprove(pool: StackPool, at: Count, notes: Count, more: Count): boolean {
    const { counts, value } = this;
    const { bounds } = pool;
    const row = at * counts;
    const to = notes * counts;
    for (let k = notes; k < counts; k++) {
      const plain = bounds[row + k]!;
      if (plain === cannot || plain + more > value[to + k]!) continue;
      if (plain + more < value[to + k]!) return true;
      if (comesBefore(pool.high[at]!, pool.low[at]!, this.high[to + k]!, this.low[to + k]!))
        return true;
    }
    return false;
  }

  /**
   * Enters what a stack gives, if it is better or ties and comes first.
   * @param notes - its notes
   * @param players - sounding players
   * @param value - cost · chairScale + chair cost
   * @param high - first word of its set of candidates
   * @param low - second word
   */
  improve(notes: Count, players: Count, value: Count, high: SetWord, low: SetWord): void {
    const to = notes * this.counts + players;
    const before = this.value[to]!;
    if (value > before) return;
    if (value === before && !comesBefore(high, low, this.high[to]!, this.low[to]!)) return;
    this.value[to] = value;
    this.high[to] = high;
    this.low[to] = low;
  }
}
