import { seededChance } from "../base/index.ts";
import type { Count, Db, Ratio, Seconds } from "../base/index.ts";
import { SlowWander } from "./slow-wander.ts";

/** The farthest a held note's level strays from its mean: small beside a dynamic; judgement. */
export const SHIMMER_DB: Db = 0.45 as Db;
/** Time from one chance level to the next; judgement. */
const SPACING_SECONDS = 0.26 as Seconds;
const LN10_OVER_20 = Math.LN10 / 20;

/** How the level of one held note strays a little, since nobody's breath is a machine's. */
export class LevelMotion {
  private readonly wander: SlowWander;

  /**
   * @param seed - the player's seed for this note
   * @param step - seconds between two calls of `next`
   */
  constructor(seed: Count, step: Seconds) {
    this.wander = new SlowWander(seededChance(seed ^ 0x2c1b3c6d), SPACING_SECONDS, step);
  }

  /**
   * Level at the next step.
   * @returns gain, within SHIMMER_DB of 1
   */
  next(): Ratio {
    // 10^(dB/20) to second order: off by less than 0.001 dB within ±1 dB.
    const x = SHIMMER_DB * this.wander.next() * LN10_OVER_20;
    return 1 + x + 0.5 * x * x;
  }
}
