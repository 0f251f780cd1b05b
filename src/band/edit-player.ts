import { fail, ok, type Result } from "../base/index.ts";
import type { InstrumentId, MuteId, Player, PlayerLevel, SoundingRange } from "./band-types.ts";
import { instrumentOf, instruments } from "./instruments.ts";
import { mutesOf } from "./mutes.ts";
import { chairAfterChange, playerFrom, reachOf, sharedRange, type PlayerParts } from "./players.ts";
import { seatFor } from "./seats.ts";
import { pitchName } from "./note-number.ts";

const partsWithoutLimits = (player: Player): PlayerParts => ({
  id: player.id,
  row: seatFor(player.instrument, player.chair),
  chair: player.chair,
  level: player.level,
  mute: player.mute,
});

const partsOf = (player: Player): PlayerParts => ({
  ...partsWithoutLimits(player),
  ...(player.personalRange ? { personalRange: player.personalRange } : {}),
});

function rebuilt(parts: PlayerParts): Result<Player> {
  const player = playerFrom(parts);
  if (player.range.low <= player.range.high) return ok(player);
  const { low, high } = reachOf(parts.row, parts.level);
  return fail(
    "personal-range-empty",
    `${player.name} cannot sound anything between those limits: choose them between ` +
      `${pitchName(low)} and ${pitchName(high)} (sounding).`,
  );
}

/**
 * The same person with another instrument in hand. Section, range, zones and home follow the
 * instrument; a mute that it does not take, and a personal range made for the other one, fall away.
 * @param player - the player
 * @param instrument - instrument id
 * @returns the player, or a problem: "instrument-unknown", "instrument-not-a-wind"
 */
export function withInstrument(player: Player, instrument: InstrumentId): Result<Player> {
  if (!instruments.some((each) => each.id === instrument))
    return fail("instrument-unknown", `There is no instrument "${instrument}" here.`, {
      suggestions: ["flugelhorn", "soprano-sax", "flute"],
    });
  if (instrument === player.instrument) return ok(player);
  const isRhythm = (id: InstrumentId): boolean => instrumentOf(id).section === "rhythm";
  if (isRhythm(instrument) !== isRhythm(player.instrument))
    return fail(
      "instrument-not-a-wind",
      `${player.name} cannot change to ${instrumentOf(instrument).name.toLowerCase()}: ` +
        "a wind player doubles on winds only.",
    );
  const row = seatFor(instrument, player.chair);
  return rebuilt({
    id: player.id,
    row,
    chair: chairAfterChange(player, row),
    level: player.level,
    mute: mutesOf(instrument).includes(player.mute) ? player.mute : "open",
  });
}

/**
 * The same player with another mute, or open.
 * @param player - the player
 * @param mute - mute id
 * @returns the player, or the problem "mute-not-taken"
 */
export function withMute(player: Player, mute: MuteId): Result<Player> {
  const taken = mutesOf(player.instrument);
  if (!taken.includes(mute)) {
    const choice = taken.length > 1 ? `choose ${taken.join(", ")}` : "this instrument plays open";
    return fail("mute-not-taken", `${player.name} takes no ${mute} mute: ${choice}.`, {
      suggestions: taken.slice(0, 3),
    });
  }
  return ok(playerFrom({ ...partsOf(player), mute }));
}

/**
 * The same player at another level.
 * @param player - the player
 * @param level - school, semi-pro or pro
 * @returns the player, or the problem "personal-range-empty" when that level cannot reach the
 *   personal range
 */
export function withLevel(player: Player, level: PlayerLevel): Result<Player> {
  return rebuilt({ ...partsOf(player), level });
}

/**
 * The same player with limits of his or her own, or without any.
 * @param player - the player
 * @param personalRange - lowest and highest sounding pitch; undefined lifts the limits
 * @returns the player, or a problem: "personal-range-upside-down", "personal-range-empty"
 */
export function withPersonalRange(
  player: Player,
  personalRange: SoundingRange | undefined,
): Result<Player> {
  const parts = partsWithoutLimits(player);
  if (personalRange === undefined) return ok(playerFrom(parts));
  if (personalRange.low > personalRange.high)
    return fail(
      "personal-range-upside-down",
      `${player.name}: the lowest note (${pitchName(personalRange.low)}) lies above the highest ` +
        `(${pitchName(personalRange.high)}); swap them.`,
    );
  return rebuilt({ ...parts, personalRange: sharedRange(personalRange, personalRange) });
}
