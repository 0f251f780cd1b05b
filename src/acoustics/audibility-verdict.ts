import type { Db } from "../base/index.ts";

/** How a source stands among others by its margin alone. */
export type HearingClass = "clear" | "covered" | "buried";

/** What can be said of a source when players vary. */
export type AudibilityVerdict = HearingClass | "uncertain";

/** From here a source is clear; from 0 dB it is heard but covered; below it is buried. */
export const CLEAR_FROM_DB = 5 as Db;

/** How far one player may sound from the average without surprise, either way. */
export const PLAYER_SPREAD_DB = 3 as Db;

/** A verdict with what the margin alone says. */
export interface Judgement {
  readonly verdict: AudibilityVerdict;
  readonly leaning: HearingClass;
}

function classOf(margin: Db): HearingClass {
  if (margin >= CLEAR_FROM_DB) return "clear";
  return margin >= 0 ? "covered" : "buried";
}

/**
 * Puts a margin into words. A player 3 dB stronger or weaker moves the margin by as much: where that
 * decides whether the player is heard at all, the verdict is uncertain.
 * @param margin - level above the masked threshold
 * @returns clear from 5 dB, covered from 3 dB, buried under -3 dB, uncertain between; and the class
 *   of the margin itself
 * @source definition of this project, calibrated on situations of common practice
 * @example verdictOf(-7 as Db) // { verdict: "buried", leaning: "buried" }
 */
export function verdictOf(margin: Db): Judgement {
  const leaning = classOf(margin);
  const isHeardIfWeak = margin - PLAYER_SPREAD_DB >= 0;
  const isHeardIfStrong = margin + PLAYER_SPREAD_DB >= 0;
  return { verdict: isHeardIfWeak === isHeardIfStrong ? leaning : "uncertain", leaning };
}
