import type { Db, Seconds } from "../base/index.ts";
import type { SoundPlan, StageSeat } from "./sound-plan-types.ts";

/** Silence between two sounds that are compared: long enough to part them, short enough to hold. */
export const TURN_GAP_SECONDS: Seconds = 0.6 as Seconds;

/** One of several plans that are heard one after the other. */
export interface Turn {
  readonly plan: SoundPlan;
  /** Level change of this plan, for level-matching; 0 dB unless given. */
  readonly gain?: Db;
}

/**
 * Several plans one after the other as a single plan.
 * @param turns - plans in order, each with its level change
 * @param gap - silence between the end of the last note and the next plan, 0.6 s unless given
 * @returns one plan; a player who sits differently in two of them takes the first seat
 */
export function plansInTurn(turns: readonly Turn[], gap: Seconds = TURN_GAP_SECONDS): SoundPlan {
  let start = 0;
  const seats = new Map<string, StageSeat>();
  const events = turns.flatMap(({ plan, gain = 0 as Db }) => {
    const shift = start;
    for (const seat of plan.seats) if (!seats.has(seat.playerId)) seats.set(seat.playerId, seat);
    start = shift + lengthOf(plan) + gap;
    return plan.events.map((event) => ({
      ...event,
      onset: (shift + event.onset) as Seconds,
      trim: (event.trim + gain) as Db,
    }));
  });
  return { events, seats: [...seats.values()], seed: turns[0]?.plan.seed ?? 1 };
}

function lengthOf({ events }: SoundPlan): number {
  return Math.max(0, ...events.map(({ onset, duration }) => onset + duration));
}
