import { seededChance } from "../base/index.ts";
import type { Articulation } from "../band/index.ts";
import type { Chance, Count, Ratio, Seconds } from "../base/index.ts";
import { pitchScatter } from "./player-scatter.ts";
import { SlowWander } from "./slow-wander.ts";

/** Slow wander of a held pitch around its mean, cents either side: value from memory. */
const WANDER_CENTS = 1.2;
const WANDER_STEP_SECONDS = 0.17 as Seconds;
/** Time the vibrato takes to reach its full extent once it has begun. */
const VIBRATO_GROWTH_SECONDS = 0.35;
/** How much players differ in rate and extent. */
const RATE_SPREAD = 0.06;
const EXTENT_SPREAD = 0.2;

/**
 * Pitch of one held note as it moves: the player's own offset, a slow wander, and a vibrato that
 * starts late. Asked at even steps of time, it turns a unit vector instead of calling a sine.
 */
export class PitchMotion {
  private readonly chance: Chance;
  private readonly offset: number;
  private readonly onset: number;
  private readonly extent: number;
  private readonly turnCos: number;
  private readonly turnSin: number;
  private cos = 1;
  private sin = 0;
  private time = 0;
  private readonly wander: SlowWander;

  /**
   * @param articulation - vibrato of the instrument in this register
   * @param seed - the player's seed for this note
   * @param step - seconds between two calls of `next`
   */
  constructor(
    articulation: Pick<Articulation, "vibratoHz" | "vibratoCents" | "vibratoDelaySeconds">,
    seed: Count,
    private readonly step: Seconds,
  ) {
    this.chance = seededChance(seed);
    this.offset = pitchScatter(seed);
    const rate = articulation.vibratoHz * (1 + RATE_SPREAD * this.draw());
    this.extent = articulation.vibratoCents * (1 + EXTENT_SPREAD * this.draw());
    this.onset = articulation.vibratoDelaySeconds * (1 + EXTENT_SPREAD * this.draw());
    this.turnCos = Math.cos(2 * Math.PI * rate * step);
    this.turnSin = Math.sin(2 * Math.PI * rate * step);
    this.wander = new SlowWander(this.chance, WANDER_STEP_SECONDS, step);
  }

  /**
   * Pitch at the next step.
   * @returns frequency against the written pitch, 1 when exactly in tune
   */
  next(): Ratio {
    const cents = this.offset + WANDER_CENTS * this.wander.next() + this.vibrato();
    this.time += this.step;
    // 2^(cents/1200) to second order: off by less than 0.001 cent within ±100 cents
    const x = cents * (Math.LN2 / 1200);
    return 1 + x + 0.5 * x * x;
  }

  private vibrato(): number {
    const since = this.time - this.onset;
    if (since <= 0) return 0;
    const cos = this.cos * this.turnCos - this.sin * this.turnSin;
    this.sin = this.sin * this.turnCos + this.cos * this.turnSin;
    this.cos = cos;
    return this.extent * Math.min(1, since / VIBRATO_GROWTH_SECONDS) * this.sin;
  }

  private draw(): number {
    return 2 * this.chance() - 1;
  }
}
