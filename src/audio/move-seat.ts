import { fail, ok } from "../base/index.ts";
import type { Ratio, Result } from "../base/index.ts";
import type { StageSeat } from "./sound-plan-types.ts";
import { SEAT_LIMITS } from "./stage-table.ts";

/** Where a chair is to go; what is left out stays as it is. */
export interface SeatChange {
  /** −1 the listener's far left, 0 the middle, +1 far right. */
  readonly pan?: Ratio;
  /** Metres from the listener. */
  readonly distanceM?: Ratio;
}

/**
 * Moves one player's chair.
 * @param seats - a seat for every player, such as `usualSeats` gives
 * @param playerId - whose chair
 * @param change - new pan, new distance or both, within `SEAT_LIMITS`
 * @returns all seats in the same order, the one changed; or the problem: "seat-player-unknown",
 *   "seat-pan-out-of-range", "seat-distance-out-of-range"
 * @example moveSeat(usualSeats(players), "tpt1", { pan: -0.8 })
 */
export function moveSeat(
  seats: readonly StageSeat[],
  playerId: string,
  change: SeatChange,
): Result<readonly StageSeat[]> {
  const old = seats.find((seat) => seat.playerId === playerId);
  if (!old) {
    const ids = seats.map((seat) => seat.playerId);
    return fail("seat-player-unknown", `Nobody called "${playerId}" sits on this stage.`, {
      suggestions: ids.slice(0, 3),
    });
  }
  const moved: StageSeat = { ...old, ...change };
  const problem = seatProblem(moved);
  if (problem) return problem;
  return ok(seats.map((seat) => (seat === old ? moved : seat)));
}

/**
 * Says what is wrong with a seat.
 * @param seat - any seat
 * @returns the problem, or nothing when it stands on the stage
 */
export function seatProblem({ pan, distanceM }: StageSeat): ReturnType<typeof fail> | undefined {
  if (!isWithin(pan, SEAT_LIMITS.pan))
    return fail(
      "seat-pan-out-of-range",
      `A seat lies between −1, far left, and 1, far right, not at ${pan}.`,
    );
  const [near, far] = SEAT_LIMITS.distanceM;
  if (!isWithin(distanceM, SEAT_LIMITS.distanceM))
    return fail(
      "seat-distance-out-of-range",
      `A seat is ${near} to ${far} metres from the listener, not ${distanceM}.`,
    );
  return undefined;
}

const isWithin = (value: Ratio, [low, high]: readonly [Ratio, Ratio]): boolean =>
  value >= low && value <= high;
