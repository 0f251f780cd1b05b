import type { Ratio } from "../base/index.ts";
import { balanceTable } from "./balance-table.ts";
import type { Dynamic, Player } from "./band-types.ts";
import { muteRow } from "./mutes.ts";

/** Way from p (0) to f (1); mp and mf lie a third and two thirds between, our own reading. */
const WAY_TO_FORTE: Readonly<Record<Dynamic, number>> = Object.freeze({
  ppp: 0,
  pp: 0,
  p: 0,
  mp: 1 / 3,
  mf: 2 / 3,
  f: 1,
  ff: 1,
  fff: 1,
});

/**
 * Weight of a player in balance units: four for a trumpet at f, one for any wind at p. A mute takes
 * its share off at every dynamic.
 * @param player - the player
 * @param dynamic - dynamic on paper
 * @returns units; 0 for rhythm players
 * @source N. Rimsky-Korsakov, Principles of Orchestration, 1922; saxes and mutes from memory
 * @example balanceUnits(makePlayer({ seat: "hn1" }), "f") // 2
 */
export function balanceUnits(player: Player, dynamic: Dynamic): Ratio {
  const { unitsAtF } = balanceTable[player.instrument];
  if (unitsAtF === 0) return 0;
  const open = 1 + (unitsAtF - 1) * WAY_TO_FORTE[dynamic];
  return open * muteRow(player.mute).weight;
}
