import type { Ratio } from "../base/index.ts";
import type { InstrumentId, Player } from "../band/index.ts";
import type { StageSeat } from "./sound-plan-types.ts";
import { RHYTHM_PLACES, STAGE_ROWS } from "./stage-table.ts";
import type { StageRow } from "./stage-table.ts";

/** Order of the saxes' chairs in the row of the stage table: altos, tenors, baritone. */
const SAX_CHAIRS: Readonly<Partial<Record<InstrumentId, readonly number[]>>> = Object.freeze({
  "alto-sax": Object.freeze([0, 1]),
  "tenor-sax": Object.freeze([2, 3]),
  "baritone-sax": Object.freeze([4]),
  "soprano-sax": Object.freeze([0]),
  flute: Object.freeze([1]),
  clarinet: Object.freeze([2]),
  "bass-clarinet": Object.freeze([4]),
});
/** Bass trombone sits at the end of its row. */
const LAST_TROMBONE = 3;

/**
 * Where a player sits unless the user moves the chair.
 * @param player - a player of the line-up
 * @returns place as the listener in front hears it
 */
export function seatOf(player: Player): StageSeat {
  const rhythm = RHYTHM_PLACES[player.id];
  if (rhythm) return { playerId: player.id, ...rhythm };
  const row = STAGE_ROWS.find(({ section }) => section === player.section)!;
  return { playerId: player.id, pan: panIn(row, chairOf(player)), distanceM: row.distanceM };
}

/**
 * Place of a member of the accompaniment who is in no line-up.
 * @param id - "piano", "bass" or "drums"
 * @returns the place
 */
export function accompanimentSeat(id: "piano" | "bass" | "drums"): StageSeat {
  return { playerId: id, ...RHYTHM_PLACES[id]! };
}

/**
 * The usual set-up as plain data, one row a player: what the page shows, lets the user change with
 * `moveSeat`, and hands on in `PlanOptions.seats`.
 * @param players - a line-up
 * @returns the players' seats in the same order, then those of piano, bass and drums where the
 *   line-up has no such player
 * @source stage-table.ts
 */
export function usualSeats(players: readonly Player[]): readonly StageSeat[] {
  const seats = players.map(seatOf);
  const taken = new Set(seats.map(({ playerId }) => playerId));
  const accompaniment = (["piano", "bass", "drums"] as const).map(accompanimentSeat);
  return [...seats, ...accompaniment.filter(({ playerId }) => !taken.has(playerId))];
}

function chairOf(player: Player): number {
  if (player.instrument === "bass-trombone") return LAST_TROMBONE;
  const chairs = SAX_CHAIRS[player.instrument];
  if (player.section !== "saxes" || !chairs) return player.chair;
  return chairs[player.chair % chairs.length]!;
}

/** Chairs beyond the row sit between the others, so that nobody leaves the stage. */
function panIn(row: StageRow, chair: number): Ratio {
  const pan = row.pans[chair % row.pans.length]!;
  return chair < row.pans.length ? pan : pan + 0.075;
}
