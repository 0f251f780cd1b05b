import type { Chance, Ratio, Seconds } from "../base/index.ts";

/**
 * A value that drifts between chance points: never still, never sudden. It leaves every point and
 * reaches the next with level ends, so that what follows it has no corner.
 */
export class SlowWander {
  private from = 0;
  private to: number;
  private time = 0;

  /**
   * @param chance - draws the points
   * @param spacing - seconds from one point to the next
   * @param step - seconds between two calls of `next`
   */
  constructor(
    private readonly chance: Chance,
    private readonly spacing: Seconds,
    private readonly step: Seconds,
  ) {
    this.to = 2 * chance() - 1;
  }

  /**
   * The value at the next step.
   * @returns −1 to 1; close to 0 at first, mean 0 over many seeds
   */
  next(): Ratio {
    this.time += this.step;
    if (this.time > this.spacing) {
      this.time -= this.spacing;
      this.from = this.to;
      this.to = 2 * this.chance() - 1;
    }
    const share = this.time / this.spacing;
    return this.from + share * share * (3 - 2 * share) * (this.to - this.from);
  }
}
