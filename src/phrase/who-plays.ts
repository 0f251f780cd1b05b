import { canSound, type Player, type SectionId } from "../band/index.ts";
import type { Divisions } from "../theory/index.ts";
import type { Moment } from "./moments.ts";

/** A player or a section that plays, or rests, for a time. Later entries win over earlier ones. */
export interface Turn {
  /** Player id, or section. */
  readonly who: string;
  readonly from: Divisions;
  /** Excluded. */
  readonly to: Divisions;
  readonly plays: boolean;
}

const isOf = (player: Player, who: string): boolean =>
  player.id === who || (player.section satisfies SectionId) === who;

/**
 * Whether a player may play at a time.
 * @param player - the player
 * @param at - time
 * @param turns - who plays when; without any everyone plays
 * @returns true unless the last entry that fits says rest
 */
export function playsAt(player: Player, at: Divisions, turns: readonly Turn[]): boolean {
  const last = turns
    .filter(({ who, from, to }) => isOf(player, who) && at >= from && at < to)
    .at(-1);
  return last?.plays ?? true;
}

/**
 * The players who may play at a moment, and whether that had to give: when none of them reaches the
 * melody, everyone who reaches it joins in.
 * @param players - the line-up
 * @param moment - the moment
 * @param turns - who plays when
 * @param isFree - whether a player is not fixed on something else
 * @returns ids, and true where somebody was called in
 */
export function whoPlays(
  players: readonly Player[],
  moment: Pick<Moment, "onset" | "lead">,
  turns: readonly Turn[],
  isFree: (player: Player) => boolean = () => true,
): { readonly ids: ReadonlySet<string>; readonly isCalledIn: boolean } {
  const playing = players.filter((player) => playsAt(player, moment.onset, turns));
  const ids = new Set(playing.map(({ id }) => id));
  const reaches = (player: Player): boolean => isFree(player) && canSound(player, moment.lead);
  if (playing.some(reaches)) return { ids, isCalledIn: false };
  for (const player of players) if (reaches(player)) ids.add(player.id);
  return { ids, isCalledIn: true };
}
