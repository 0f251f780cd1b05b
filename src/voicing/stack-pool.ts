import type { Count } from "../base/index.ts";
import type { SetWord } from "./stack-sets.ts";

/** Stacks a pool holds before it must be emptied: bounds memory whatever the question. */
const capacity = 8192;
const firstCapacity = 256;

/**
 * Stacks of one number of notes as plain numbers: two words for the set of notes, the stack's own
 * cost, and for each number of players a value that no assignment of the stack goes below.
 */
export class StackPool {
  count: Count = 0;
  high = new Int32Array(firstCapacity);
  low = new Int32Array(firstCapacity);
  cost = new Int32Array(firstCapacity);
  /** Rows of players + 1. */
  bounds: Int32Array;
  private readonly counts: Count;

  /** @param counts - players + 1 */
  constructor(counts: Count) {
    this.counts = counts;
    this.bounds = new Int32Array(firstCapacity * counts);
  }

  /** Whether it must be emptied before another stack is added. */
  get isFull(): boolean {
    return this.count === capacity;
  }

  /**
   * Adds a stack; its row of bounds is still to be written.
   * @param high - first word of its set of candidates
   * @param low - second word
   * @param cost - what the stack costs without its players
   * @returns its index
   */
  add(high: SetWord, low: SetWord, cost: Count): Count {
    if (this.count === this.high.length) this.grow();
    const at = this.count++;
    this.high[at] = high;
    this.low[at] = low;
    this.cost[at] = cost;
    return at;
  }

  private grow(): void {
    const size = this.high.length * 2;
    this.high = longer(this.high, size);
    this.low = longer(this.low, size);
    this.cost = longer(this.cost, size);
    this.bounds = longer(this.bounds, size * this.counts);
  }
}

function longer(values: Int32Array, length: number): Int32Array<ArrayBuffer> {
  const grown = new Int32Array(length);
  grown.set(values);
  return grown;
}
