import type { Player } from "../../band/index.ts";

/**
 * Players in the order in which notes are handed out from the top: the instrument that lies
 * highest first, and within an instrument the first chair first.
 * @param players - in any order
 * @returns the same players, highest first
 */
export function highestFirst(players: readonly Player[]): readonly Player[] {
  const heightOf = new Map<string, number>();
  for (const { instrument, home } of players)
    heightOf.set(instrument, Math.max(heightOf.get(instrument) ?? 0, home.low + home.high));
  const height = (player: Player): number => heightOf.get(player.instrument) ?? 0;
  const isSame = (a: Player, b: Player): boolean => a.instrument === b.instrument;
  return [...players].sort((a, b) =>
    isSame(a, b)
      ? a.chair - b.chair
      : height(b) - height(a) || (a.instrument < b.instrument ? -1 : 1),
  );
}
