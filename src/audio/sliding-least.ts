import type { Count, Ratio } from "../base/index.ts";

/**
 * Least of the latest so many values, in constant time a value: a queue that keeps only those
 * that can still become the least.
 * @source D. Lemire, Streaming Maximum-Minimum Filter, 2006
 */
export class SlidingLeast {
  private readonly values: Float64Array;
  private readonly times: Float64Array;
  private readonly mask: number;
  private first = 0;
  private end = 0;
  private time = 0;

  /** @param window - how many values back the least is taken, the newest included */
  constructor(private readonly window: Count) {
    let size = 2;
    while (size <= window) size *= 2;
    this.values = new Float64Array(size);
    this.times = new Float64Array(size);
    this.mask = size - 1;
  }

  /**
   * Takes a value.
   * @param value - the newest
   * @returns the least of the window
   */
  push(value: Ratio): Ratio {
    const { values, times, mask } = this;
    while (this.end > this.first && values[(this.end - 1) & mask]! >= value) this.end--;
    values[this.end & mask] = value;
    times[this.end & mask] = this.time;
    this.end++;
    if (times[this.first & mask]! <= this.time - this.window) this.first++;
    this.time++;
    return values[this.first & mask]!;
  }
}
