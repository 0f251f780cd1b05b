import type { Dynamic, Player } from "../band/index.ts";
import type { Voicing } from "../voicing/index.ts";
import { listenTo } from "./listener.ts";

/** A player whom a listener cannot hear out of the whole, and who is in the way. */
export interface CoveredPlayer {
  readonly playerId: string;
  /** Who covers the player most; empty when it is everybody together. */
  readonly by: readonly Player[];
}

/**
 * Players whom the model listener surely does not hear; doubtful ones are left out.
 * @param voicing - who sounds what
 * @param dynamic - dynamic on paper
 * @returns one row a player, in no stated order; none when nobody sounds
 */
export function coveredPlayers(voicing: Voicing, dynamic: Dynamic): readonly CoveredPlayer[] {
  if (voicing.placements.length === 0) return [];
  return listenTo(voicing, dynamic)
    .sources.filter(({ judgement }) => judgement.verdict === "buried")
    .flatMap(({ playerIds, coveredBy }) =>
      playerIds.map((playerId) => ({ playerId, by: coveredBy })),
    );
}
