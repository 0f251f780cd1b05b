import { fail, ok, type Result } from "../base/index.ts";
import type { LineUp, Player, SectionId } from "./band-types.ts";
import { lineUpTable, MOST_PLAYERS } from "./line-up-table.ts";
import { makePlayer, type PlayerRequest } from "./players.ts";

/** Sections in the order of a line-up. */
export const sectionOrder: readonly SectionId[] = Object.freeze<SectionId[]>([
  "trumpets",
  "trombones",
  "saxes",
  "rhythm",
]);

/** The line-ups to start from. */
export const lineUps: readonly LineUp[] = Object.freeze(
  lineUpTable.map(({ id, name, level, seats }) =>
    Object.freeze({ id, name, players: seats.map((seat) => makePlayer({ seat, level })) }),
  ),
);

/**
 * Looks a line-up up.
 * @param id - line-up id, as a user may have typed it
 * @returns the line-up, or the problem "line-up-unknown" with the nearest ids
 * @example lineUpById("four-horn")
 */
export function lineUpById(id: string): Result<LineUp> {
  const found = lineUps.find((each) => each.id === id);
  if (found) return ok(found);
  const ids = lineUps.map((each) => each.id);
  return fail("line-up-unknown", `There is no line-up "${id}"; choose ${ids.join(", ")}.`, {
    suggestions: ids.slice(0, 3),
  });
}

const withPlayers = (lineUp: LineUp, players: readonly Player[]): LineUp =>
  Object.freeze({ ...lineUp, players: Object.freeze([...players]) });

const place = (player: Player): number => sectionOrder.indexOf(player.section);

/** Before the first player of a later section. */
function inserted(players: readonly Player[], player: Player): readonly Player[] {
  const next = players.findIndex((each) => place(each) > place(player));
  const at = next < 0 ? players.length : next;
  return [...players.slice(0, at), player, ...players.slice(at)];
}

/**
 * A line-up with one more player, at the end of the section.
 * @param lineUp - where to add
 * @param player - whom to add
 * @returns the line-up, or a problem: "player-twice", "too-many-players"
 */
export function addPlayer(lineUp: LineUp, player: Player): Result<LineUp> {
  if (lineUp.players.some((each) => each.id === player.id))
    return fail("player-twice", `${player.name} is in the line-up already.`);
  if (lineUp.players.length >= MOST_PLAYERS)
    return fail(
      "too-many-players",
      `A line-up holds at most ${MOST_PLAYERS} players; take one out first.`,
    );
  return ok(withPlayers(lineUp, inserted(lineUp.players, player)));
}

/**
 * A line-up without one of its players. The last one may go too: an empty line-up is a state on
 * the way, and the question says then that nobody is left to play.
 * @param lineUp - where to take from
 * @param playerId - whom to take out
 * @returns the line-up, or the problem "player-unknown"
 */
export function removePlayer(lineUp: LineUp, playerId: string): Result<LineUp> {
  if (!lineUp.players.some((each) => each.id === playerId)) return unknownPlayer(lineUp, playerId);
  return ok(
    withPlayers(
      lineUp,
      lineUp.players.filter((each) => each.id !== playerId),
    ),
  );
}

/**
 * A line-up in which a player with the same id is exchanged, for instance after withMute. A player
 * whose section changed moves there.
 * @param lineUp - where to exchange
 * @param player - the new form of the player
 * @returns the line-up, or the problem "player-unknown"
 */
export function replacePlayer(lineUp: LineUp, player: Player): Result<LineUp> {
  const old = lineUp.players.find((each) => each.id === player.id);
  if (!old) return unknownPlayer(lineUp, player.id);
  if (old.section === player.section)
    return ok(
      withPlayers(
        lineUp,
        lineUp.players.map((each) => (each === old ? player : each)),
      ),
    );
  const rest = lineUp.players.filter((each) => each !== old);
  return ok(withPlayers(lineUp, inserted(rest, player)));
}

/**
 * A player of a chair under the first id that the line-up has not used: a fifth trumpet on the
 * chair of the fourth is "tpt5".
 * @param lineUp - whose ids are taken
 * @param request - chair, level, mute and so on, without an id
 * @returns the player
 * @throws RangeError as makePlayer does
 */
export function freshPlayer(lineUp: LineUp, request: Omit<PlayerRequest, "id">): Player {
  const taken = new Set(lineUp.players.map((each) => each.id));
  if (!taken.has(request.seat)) return makePlayer(request);
  const stem = request.seat.replace(/\d+$/, "");
  let number = 2;
  while (taken.has(`${stem}${number}`)) number += 1;
  return makePlayer({ ...request, id: `${stem}${number}` });
}

function unknownPlayer(lineUp: LineUp, playerId: string): Result<LineUp> {
  return fail("player-unknown", `There is no player "${playerId}" in ${lineUp.name}.`, {
    suggestions: lineUp.players.slice(0, 3).map((each) => each.id),
  });
}
