import { fail, ok, quantity, type Count, type Result } from "../../base/index.ts";
import {
  makePlayer,
  seatIds,
  type InstrumentId,
  type MuteId,
  type Player,
  type PlayerLevel,
  type PlayerRequest,
  type SeatId,
} from "../../band/index.ts";

/** A player as a file keeps one: the chair and what differs from it. */
export interface SavedPlayer {
  readonly seat: SeatId;
  readonly id?: string;
  readonly level?: PlayerLevel;
  readonly mute?: MuteId;
  readonly instrument?: InstrumentId;
  /** Personal limits, sounding MIDI note numbers. */
  readonly range?: readonly [low: Count, high: Count];
}

/**
 * What a file keeps of a player: ranges, costs and names follow from the tables again.
 * @param player - a player that the band made
 * @returns the chair and what differs
 * @throws RangeError when no chair of the band gives this player
 */
export function savedPlayer(player: Player): SavedPlayer {
  const known = savedBefore.get(player) ?? searchedPlayer(player);
  savedBefore.set(player, known);
  return known;
}

/** Players are never changed in place, so what was found once holds. */
const savedBefore = new WeakMap<Player, SavedPlayer>();
const openPlayers = new Map<SeatId, Player>();

function openPlayer(seat: SeatId): Player {
  const player = openPlayers.get(seat) ?? makePlayer({ seat });
  openPlayers.set(seat, player);
  return player;
}

function searchedPlayer(player: Player): SavedPlayer {
  const wanted = JSON.stringify(player);
  for (const seat of likelySeats(player)) {
    const saved = differences(player, seat);
    const made = rebuiltPlayer(saved);
    if (made.ok && JSON.stringify(made.value) === wanted) return saved;
  }
  throw new RangeError(`a player must be one that the band can make, got "${player.id}"`);
}

/** The player's own chair, then chairs of the same instrument, then all others. */
function likelySeats({ id, instrument }: Player): readonly SeatId[] {
  const rank = (seat: SeatId): Count => {
    if (seat === id) return 0;
    return openPlayer(seat).instrument === instrument ? 1 : 2;
  };
  return [...seatIds].sort((a, b) => rank(a) - rank(b));
}

function differences(player: Player, seat: SeatId): SavedPlayer {
  const { id, level, mute, instrument, personalRange } = player;
  const plain = openPlayer(seat);
  return {
    seat,
    ...(id === seat ? {} : { id }),
    ...(level === plain.level ? {} : { level }),
    ...(mute === plain.mute ? {} : { mute }),
    ...(instrument === plain.instrument ? {} : { instrument }),
    ...(personalRange ? { range: [personalRange.low, personalRange.high] as const } : {}),
  };
}

/**
 * Makes a saved player anew, so that a file can hold no range that the band would not give.
 * @param saved - chair and differences, checked for form
 * @returns the player, or the problem "project-player"
 */
export function rebuiltPlayer(saved: SavedPlayer): Result<Player> {
  const { range, ...rest } = saved;
  const limits = range && { low: quantity(range[0]), high: quantity(range[1]) };
  const request = (limits ? { ...rest, personalRange: limits } : rest) as PlayerRequest;
  try {
    return ok(makePlayer(request));
  } catch (fault) {
    if (!(fault instanceof RangeError)) throw fault;
    return fail("project-player", `The project holds a player who cannot be: ${fault.message}.`);
  }
}
