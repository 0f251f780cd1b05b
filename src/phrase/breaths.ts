import { quantity, type Count } from "../base/index.ts";
import { canSound, type Player } from "../band/index.ts";
import { placeOf, type Divisions, type Melody } from "../theory/index.ts";
import { breathTable } from "./breath-table.ts";
import { secondsOf, type Moment } from "./moments.ts";

/** Breaths fall where the moments do, so cuts are planned somewhat early. */
const margin = 0.75;
/** How far from its place in a stretch a breath may lie, as a share of the part it ends. */
const window = 0.2;

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
 * Where players rest to breathe, staggered so that the band goes on: each stretch that is too long
 * for a player is cut into equal parts, and near each cut the player leaves out what is missed
 * least: short notes rather than long ones, never the highest, seldom a downbeat or where a
 * neighbour breathes. Whoever carries the melody breathes only where the melody does.
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
  for (const { first, last } of stretchesOf(moments, melody)) {
    // The first and last moment of a stretch belong to everyone.
    const pauses = pausesIn(moments.slice(first, last + 1), melody);
    players.forEach((player, index) => {
      if (player.id === lead || players.length < 3) return;
      const neighbour = players[index - 1];
      const missed = ({ at, badness }: Pause): number => {
        const busy = Math.max(...at.map((each) => resting[each]!.size));
        const isNext = at.some((each) => neighbour && resting[each]!.has(neighbour.id));
        return busy >= most ? Infinity : badness + 4 * busy + (isNext ? 8 : 0);
      };
      const longest = margin * breathTable.longestSeconds[player.instrument];
      for (const ideal of cutsOf(moments.slice(first, last + 1), melody, longest))
        for (const each of bestOf(pauses, ideal, missed)) resting[each]!.add(player.id);
    });
  }
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
  // At the end of a long note everyone can take a breath (catch-breath.ts).
  const isAfterLong = ({ isHeld }: Moment, index: Count): boolean =>
    !isHeld &&
    secondsOf(moments[index - 1]?.duration ?? quantity<Divisions>(0), melody) >=
      breathTable.longNoteSeconds;
  const starts = moments.filter(
    (moment, index) => index === 0 || isBreathBefore(moment, melody) || isAfterLong(moment, index),
  );
  return starts.map(({ index }, n) => ({
    first: index,
    last: (starts[n + 1]?.index ?? moments.length) - 1,
  }));
}

/** A place to breathe: one moment, or two that are short, and how much they are missed. */
interface Pause {
  /** Indices of the moments left out. */
  readonly at: readonly Count[];
  /** Middle, in seconds from the start of the stretch. */
  readonly middle: number;
  readonly badness: number;
}

/** Times at which a stretch is to be cut, with the room around each; none when it is short. */
function cutsOf(
  inside: readonly Moment[],
  melody: Melody,
  longest: number,
): readonly { readonly at: number; readonly room: number }[] {
  const whole = inside.reduce((sum, { duration }) => sum + secondsOf(duration, melody), 0);
  const parts = Math.ceil(whole / longest);
  return Array.from({ length: Math.max(0, parts - 1) }, (_, n) => ({
    at: (whole * (n + 1)) / parts,
    room: (window * whole) / parts,
  }));
}

/** All places to breathe inside a stretch. */
function pausesIn(inside: readonly Moment[], melody: Melody): readonly Pause[] {
  const starts: number[] = [];
  let now = 0;
  for (const { duration } of inside) {
    starts.push(now);
    now += secondsOf(duration, melody);
  }
  starts.push(now);
  const top = Math.max(...inside.map(({ lead }) => lead));
  const pauses: Pause[] = [];
  for (let from = 1; from < inside.length - 1; from++)
    for (let to = from; to <= from + 1 && to < inside.length - 1; to++) {
      const left = inside.slice(from, to + 1);
      const seconds = starts[to + 1]! - starts[from]!;
      const isLong = starts[from + 1]! - starts[from]! >= breathTable.breathSeconds;
      if (to > from ? isLong || seconds < breathTable.breathSeconds : !isLong) continue;
      const badness = left.reduce(
        (sum, moment) => sum + missing(moment, moment.lead === top, melody),
        Math.round(10 * seconds),
      );
      const at = left.map(({ index }) => index);
      pauses.push({ at, middle: (starts[from]! + starts[to + 1]!) / 2, badness });
    }
  return pauses;
}

/** How much a note is missed beyond its length. Judgement. */
function missing({ isHeld, onset }: Moment, isTop: boolean, melody: Melody): number {
  const { beat, part } = placeOf(melody, onset);
  const isDownbeat = beat === 1 && part[0] === 0;
  return (isTop ? 20 : 0) + (isDownbeat ? 6 : 0) + (isHeld ? 6 : 0);
}

/** The pause that is missed least near a time; the first among equals, none where nobody may rest. */
function bestOf(
  pauses: readonly Pause[],
  ideal: { readonly at: number; readonly room: number },
  missed: (pause: Pause) => number,
): readonly Count[] {
  const distance = ({ middle }: Pause): number => Math.abs(middle - ideal.at);
  const near = pauses.filter((pause) => distance(pause) <= ideal.room);
  const nearest = [...pauses].sort((a, b) => distance(a) - distance(b)).slice(0, 3);
  return leastMissed(near, missed) ?? leastMissed(nearest, missed) ?? [];
}

function leastMissed(
  pauses: readonly Pause[],
  missed: (pause: Pause) => number,
): readonly Count[] | undefined {
  let best: Pause | undefined;
  let least = Infinity;
  for (const pause of pauses) {
    const value = missed(pause);
    if (value < least) best = pause;
    least = Math.min(least, value);
  }
  return best?.at;
}
