import type { Count, Db, Seconds } from "../base/index.ts";
import type { Chord } from "../theory/index.ts";
import type { Dynamic } from "../band/index.ts";
import type { StageSeat } from "./sound-plan-types.ts";

/** Ways to hear one voicing. */
export type Manner =
  | "hit"
  | "sustained"
  | "crescendo"
  | "rolled-from-bottom"
  | "rolled-from-top"
  | "section-by-section";

/** How a voicing is to be heard. */
export interface PlanOptions {
  /** Dynamic of the horns; a crescendo has its own. */
  readonly dynamic: Dynamic;
  readonly manner: Manner;
  /** From the start to the common release; a hit is never longer than a quarter of a second. */
  readonly seconds: Seconds;
  /** The chord, for bass and piano; without it neither sounds. */
  readonly chord?: Chord;
  readonly withBass?: boolean;
  readonly withPiano?: boolean;
  /** Ride cymbal and hi-hat keep time. */
  readonly withDrums?: boolean;
  /** Who is to stand out; everybody when it is left out or empty. */
  readonly soloPlayerIds?: readonly string[];
  /** Level of all the others against as played, −12 dB unless given; "silent" leaves them out. */
  readonly othersDb?: Db | "silent";
  /** Places that differ from the usual ones, within SEAT_LIMITS; those of others are passed over. */
  readonly seats?: readonly StageSeat[];
  /** Seed of the players' small differences, 1 unless given. */
  readonly seed?: Count;
}
