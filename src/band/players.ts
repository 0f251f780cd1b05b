import { quantity, type Count, type SoundingMidi } from "../base/index.ts";
import type {
  InstrumentId,
  MuteId,
  Player,
  PlayerLevel,
  RegisterZone,
  SeatId,
  SoundingRange,
} from "./band-types.ts";
import { instrumentOf } from "./instruments.ts";
import { levelTable, SEMITONES_OUT_OF_REACH } from "./level-table.ts";
import { mutesOf } from "./mutes.ts";
import { noteNumber } from "./note-number.ts";
import type { SeatRow } from "./seat-table.ts";
import { seatFor, seatIds, seatRow } from "./seats.ts";
import { toSounding } from "./transpose.ts";

/** What makes a player; everything else follows from the tables. */
export interface PlayerRequest {
  readonly seat: SeatId;
  /** Professional unless given. */
  readonly level?: PlayerLevel;
  /** Open unless given. */
  readonly mute?: MuteId;
  /** Sounding limits of this person. */
  readonly personalRange?: SoundingRange;
  /** A double: the person of this chair with another instrument in hand. */
  readonly instrument?: InstrumentId;
  /** The chair's id unless given; a second flugelhorn is "flugel2" on the chair "flugel1". */
  readonly id?: string;
}

/** What a player is made of once chair and instrument are settled. */
export interface PlayerParts {
  readonly id: string;
  readonly row: SeatRow;
  readonly chair: Count;
  readonly level: PlayerLevel;
  readonly mute: MuteId;
  readonly personalRange?: SoundingRange;
}

const range = (low: number, high: number): SoundingRange =>
  Object.freeze({ low: quantity<SoundingMidi>(low), high: quantity<SoundingMidi>(high) });

/**
 * Stretch that two ranges share.
 * @param a - one range
 * @param b - the other
 * @returns lowest to highest shared pitch; low above high when they share nothing
 */
export function sharedRange(a: SoundingRange, b: SoundingRange): SoundingRange {
  return range(Math.max(a.low, b.low), Math.min(a.high, b.high));
}

function easyRangeOf(row: SeatRow, level: PlayerLevel): SoundingRange {
  const [low, high] = levelTable[row.id][level];
  const sounding = (name: string | null, open: number): number =>
    name === null ? open : toSounding(noteNumber(name), row.instrument);
  const stated = range(sounding(low, row.range[0]), sounding(high, row.range[1]));
  return sharedRange(stated, range(...row.range));
}

/**
 * What a chair can sound at a level: its range, cut where the level's row is too far away.
 * @param row - chair
 * @param level - school, semi-pro or pro
 * @returns lowest and highest sounding pitch
 */
export function reachOf(row: SeatRow, level: PlayerLevel): SoundingRange {
  const easy = easyRangeOf(row, level);
  const spare = SEMITONES_OUT_OF_REACH - 1;
  return sharedRange(range(...row.range), range(easy.low - spare, easy.high + spare));
}

const zoneFrom = ([top, costAtF, costAtMf, costAtP]: SeatRow["zones"][number]): RegisterZone =>
  Object.freeze({ top: quantity<SoundingMidi>(top), costAtF, costAtMf, costAtP });

const stemOf = (id: string): string => id.replace(/\d+$/, "");

const numbered = (stem: string, id: string): string =>
  [stem, id.slice(stemOf(id).length)].filter(Boolean).join(" ");

/** Name and abbreviation; a double says whose it is: "Flute (Alto 1)". */
function namesOf(id: string, row: SeatRow): Pick<Player, "name" | "abbreviation"> {
  const own = seatIds.map(seatRow).find((each) => stemOf(each.id) === stemOf(id));
  if (own === undefined || own.instrument === row.instrument)
    return { name: numbered(row.stem, id), abbreviation: numbered(row.shortStem, id) };
  return {
    name: `${row.stem} (${numbered(own.stem, id)})`,
    abbreviation: `${row.shortStem} (${numbered(own.shortStem, id)})`,
  };
}

/**
 * Puts a player together from settled parts.
 * @param parts - chair row, id, level, mute and personal range
 * @returns the player, frozen
 */
export function playerFrom(parts: PlayerParts): Player {
  const { id, row, chair, level, mute, personalRange } = parts;
  const reach = reachOf(row, level);
  return Object.freeze({
    id,
    ...namesOf(id, row),
    instrument: row.instrument,
    section: instrumentOf(row.instrument).section,
    chair,
    level,
    mute,
    range: personalRange ? sharedRange(reach, personalRange) : reach,
    easyRange: easyRangeOf(row, level),
    zones: Object.freeze(row.zones.map(zoneFrom)),
    home: range(...row.home),
    ...(personalRange ? { personalRange } : {}),
  });
}

/**
 * Makes a player of a chair, for code that knows what it asks for. What a user typed goes through
 * withMute, withPersonalRange and their like, which answer with a sentence instead of throwing.
 * @param request - chair, and what differs from an open, professional player of it
 * @returns the player
 * @throws RangeError when the chair is unknown, the instrument does not take the mute, or the
 *   personal range leaves nothing to play
 * @example makePlayer({ seat: "tpt1" }).range // { low: 52, high: 86 }
 */
export function makePlayer(request: PlayerRequest): Player {
  const seat = seatRow(request.seat);
  const row =
    request.instrument === undefined || request.instrument === seat.instrument
      ? seat
      : seatFor(request.instrument, seat.chair);
  const mute = request.mute ?? "open";
  if (!mutesOf(row.instrument).includes(mute))
    throw new RangeError(`mute of a ${row.instrument} must be one it takes, got "${mute}"`);
  const player = playerFrom({
    id: request.id ?? request.seat,
    row,
    chair: row === seat ? seat.chair : chairAfterChange(seat, row),
    level: request.level ?? "pro",
    mute,
    ...(request.personalRange ? { personalRange: request.personalRange } : {}),
  });
  if (player.range.low > player.range.high)
    throw new RangeError(`personal range must leave ${request.seat} a note to play`);
  return player;
}

/**
 * Chair number after a change of instrument: a double inside the section keeps the person's chair,
 * one in another section takes the row's.
 * @param from - instrument and chair before
 * @param to - row of the chair that the player follows now
 * @returns 0 for the first chair
 */
export function chairAfterChange(
  from: { readonly instrument: InstrumentId; readonly chair: Count },
  to: SeatRow,
): Count {
  const isSameSection =
    instrumentOf(from.instrument).section === instrumentOf(to.instrument).section;
  return isSameSection ? from.chair : to.chair;
}
