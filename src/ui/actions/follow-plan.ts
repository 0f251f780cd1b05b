import type { SoundPlan } from "../../audio/index.ts";

/** Who starts and stops sounding, and when. */
export interface Moment {
  /** From the start of the plan, ms. */
  readonly atMs: number;
  readonly players: readonly string[];
}

/**
 * The moments of a plan at which somebody starts or stops.
 * @param plan - what sounds when
 * @returns moments in order of time, the last one silent
 */
export function momentsOf(plan: SoundPlan): readonly Moment[] {
  const spans = plan.events.map(({ playerId, onset, duration }) => ({
    playerId,
    from: Math.round(1000 * onset),
    to: Math.round(1000 * (onset + duration)),
  }));
  const times = [...new Set(spans.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  return times.map((atMs) => ({
    atMs,
    players: spans.filter(({ from, to }) => from <= atMs && atMs < to).map((one) => one.playerId),
  }));
}

/**
 * Tells who sounds while a plan goes by.
 * @param plan - what sounds when, starting now
 * @param tell - is told the players at every change
 * @returns ends the telling
 */
export function followPlan(
  plan: SoundPlan,
  tell: (players: readonly string[]) => void,
): () => void {
  const timers = momentsOf(plan).map(({ atMs, players }) => setTimeout(() => tell(players), atMs));
  return () => timers.forEach(clearTimeout);
}
