import type { Count, Seconds } from "../base/index.ts";
import { canSound, type Player } from "../band/index.ts";
import type { Melody } from "../theory/index.ts";
import { breathTable } from "./breath-table.ts";
import { secondsOf, type Moment } from "./moments.ts";

/** Breaths fall where the moments do, so cuts are planned somewhat early. */
const margin = 0.85;

/** Moments without silence between them, first and last index included. */
interface Stretch {
  readonly first: Count;
  readonly last: Count;
}

/**
 * Whether the silence before a moment is long enough for a breath.
 * @param moment - the moment
 * @param melody - tempo and division
 * @returns true when it is
 * @source breath-table.ts
 */
export function isBreathBefore(moment: Moment, melody: Melody): boolean {
  return secondsOf(moment.restBefore, melody) >= breathTable.breathSeconds;
}

/**
 * Where players rest for one moment to breathe, staggered so that the band goes on: each stretch
 * that is too long for a player is cut into equal parts, and the player skips a short inner moment
 * near each cut. Whoever carries the melody breathes only where the melody does.
 * @param moments - the moments
 * @param melody - tempo and division
 * @param players - the line-up
 * @param leadPlayer - who carries the melody; the likeliest player when left out
 * @returns for each moment the ids of players who rest
 * @source staggered breathing: common practice, no single source; lengths in breath-table.ts
 */
export function plannedBreaths(
  moments: readonly Moment[],
  melody: Melody,
  players: readonly Player[],
  leadPlayer: string | undefined,
): readonly ReadonlySet<string>[] {
  const resting = moments.map(() => new Set<string>());
  const lead = leadPlayer ?? likelyLead(moments, players);
  const most = Math.max(1, Math.floor(players.length * breathTable.mostAtOnce));
  for (const stretch of stretchesOf(moments, melody))
    players.forEach((player, index) => {
      if (player.id === lead || players.length < 3) return;
      for (const at of breathsIn(stretch, moments, melody, player, index))
        if (resting[at]!.size < most) resting[at]!.add(player.id);
    });
  return resting;
}

/** Who reaches most of the melody; the first of the line-up among equals. */
function likelyLead(moments: readonly Moment[], players: readonly Player[]): string | undefined {
  let best: string | undefined;
  let most = -1;
  for (const player of players) {
    const reached = moments.filter(({ lead }) => canSound(player, lead)).length;
    if (reached > most) best = player.id;
    most = Math.max(most, reached);
  }
  return best;
}

function stretchesOf(moments: readonly Moment[], melody: Melody): readonly Stretch[] {
  const starts = moments.filter((moment, index) => index === 0 || isBreathBefore(moment, melody));
  return starts.map(({ index }, n) => ({
    first: index,
    last: (starts[n + 1]?.index ?? moments.length) - 1,
  }));
}

const durationOf = (moments: readonly Moment[], melody: Melody): Seconds =>
  moments.reduce((sum, { duration }) => sum + secondsOf(duration, melody), 0) as Seconds;

/** Indices of the moments a player skips in a stretch; empty when it is short enough. */
function breathsIn(
  { first, last }: Stretch,
  moments: readonly Moment[],
  melody: Melody,
  player: Player,
  playerIndex: Count,
): readonly Count[] {
  const inside = moments.slice(first, last + 1);
  const longest = breathTable.longestSeconds[player.instrument];
  const needed = Math.ceil(durationOf(inside, melody) / (margin * longest)) - 1;
  // The first and last moment of a stretch belong to everyone.
  const room = inside.length - 2;
  if (needed < 1 || room < 1) return [];
  const breaths: Count[] = [];
  for (let n = 1; n <= needed; n++) {
    const around = first + 1 + Math.floor((n * room) / (needed + 1));
    // Neighbours in the line-up breathe at different moments.
    const shifted = around + (playerIndex % 5) - 2;
    breaths.push(Math.min(last - 1, Math.max(first + 1, shifted)));
  }
  return [...new Set(breaths)];
}
