/**
 * Balance units of an open instrument at f, a trumpet having four; at p every wind has one.
 *
 * N. Rimsky-Korsakov, Principles of Orchestration (1922), on the comparison of resonance: at f one
 * trumpet = one trombone = one tuba = two horns, and one horn = two flutes or clarinets; at p all
 * winds are about equal. Saxophones are not covered there: three quarters of a trumpet is the top
 * of a proposal of 0.6 to 0.75, the only value of it that lies nearer the trumpet than the horn
 * (from memory, needs an ear check). Flugelhorn 0.6 of a trumpet: same proposal. Rhythm has none:
 * weight counts the winds.
 */
import type { Ratio } from "../base/index.ts";
import type { InstrumentId } from "./band-types.ts";

/** Weight of one instrument and where the number is from. */
export interface BalanceRow {
  readonly unitsAtF: Ratio;
  readonly source: string;
}

const RK = "Rimsky-Korsakov 1922, comparison of resonance";
const row = (unitsAtF: number, source: string): BalanceRow => Object.freeze({ unitsAtF, source });

/** Units at f by instrument. */
export const balanceTable: Readonly<Record<InstrumentId, BalanceRow>> = Object.freeze({
  trumpet: row(4, RK),
  flugelhorn: row(2.4, "value from memory"),
  trombone: row(4, RK),
  "bass-trombone": row(4, RK),
  horn: row(2, RK),
  tuba: row(4, RK),
  "soprano-sax": row(3, "value from memory"),
  "alto-sax": row(3, "value from memory"),
  "tenor-sax": row(3, "value from memory"),
  "baritone-sax": row(3, "value from memory"),
  flute: row(1, RK),
  clarinet: row(1, RK),
  "bass-clarinet": row(1, "as the clarinet"),
  piano: row(0, "definition of this project"),
  "double-bass": row(0, "definition of this project"),
});
