import { moveSeat, usualSeats, type SeatChange, type StageSeat } from "../../audio/index.ts";
import type { Player } from "../../band/index.ts";
import { session } from "../store.ts";
import { announce } from "./announce.ts";
import { endTyping, take } from "./steps.ts";

/**
 * Where everybody sits: the usual places, but for the chairs that were moved.
 * @param players - the line-up
 * @param moved - chairs that were moved
 * @returns a seat for every player, then for the accompaniment
 */
export function seatsOf(
  players: readonly Player[],
  moved: readonly StageSeat[],
): readonly StageSeat[] {
  return usualSeats(players).map(
    (usual) => moved.find(({ playerId }) => playerId === usual.playerId) ?? usual,
  );
}

/**
 * Moves a chair; dragging one control is one step.
 * @param playerId - whose
 * @param name - what the player is called
 * @param change - new place from side to side, or new distance
 */
export function moveChair(playerId: string, name: string, change: SeatChange): void {
  const now = session();
  const result = moveSeat(seatsOf(now.inquiry.players, now.seats), playerId, change);
  if (!result.ok) return announce(result.problem.message);
  const seat = result.value.filter((one) => one.playerId === playerId);
  const others = now.seats.filter((one) => one.playerId !== playerId);
  const what = Object.keys(change).join(" ");
  take(
    { ...now, seats: [...others, ...seat], step: `move the chair of ${name}` },
    `seat ${playerId} ${what}`,
  );
}

/** Ends a drag: the next one is a step of its own. */
export function settleChair(): void {
  endTyping();
}

/** Puts every chair back in its usual place. */
export function usualChairs(): void {
  take({ ...session(), seats: [], step: "usual seats" });
}
