import type { Count, SoundingMidi } from "../base/index.ts";
import type { Dynamic, Player, RegisterZone, SoundingRange } from "./band-types.ts";
import { dynamicClass, type DynamicClass } from "./dynamics.ts";
import { instrumentOf } from "./instruments.ts";
import { muteRow } from "./mutes.ts";

const COST_OUTSIDE_LEVEL = 4;
const SEMITONES_A_STEP_FROM_HOME = 3;

const zoneCost = (zone: RegisterZone, at: DynamicClass): Count =>
  at === "f" ? zone.costAtF : at === "mf" ? zone.costAtMf : zone.costAtP;

const outside = (sounding: number, { low, high }: SoundingRange): number =>
  Math.max(0, low - sounding, sounding - high);

function costOfMute(player: Player, sounding: SoundingMidi, at: DynamicClass): Count {
  const mute = muteRow(player.mute);
  const isLow = sounding < instrumentOf(player.instrument).range.low + mute.lowSpan;
  return mute.cost[at] + (isLow ? mute.lowCost : 0);
}

/**
 * Whether a player can sound a pitch at all.
 * @param player - the player
 * @param sounding - sounding pitch
 * @returns true inside the player's range, ends included
 */
export function canSound(player: Player, sounding: SoundingMidi): boolean {
  return sounding >= player.range.low && sounding <= player.range.high;
}

/**
 * What a register costs at a dynamic, mute included.
 * @param player - the player
 * @param sounding - sounding pitch inside the player's range
 * @param dynamic - dynamic on paper
 * @returns whole number, 0 where the instrument is at ease
 * @throws RangeError above the chair's last zone
 * @source cost C1: tops of zones from handbooks, costs judgement
 * @example costOfRegister(makePlayer({ seat: "tpt1" }), soundingMidi(84), "p") // 14
 */
export function costOfRegister(player: Player, sounding: SoundingMidi, dynamic: Dynamic): Count {
  const at = dynamicClass(dynamic);
  const zone = player.zones.find((each) => sounding <= each.top);
  if (!zone) throw new RangeError(`${player.id} has no register for MIDI note ${sounding}`);
  return zoneCost(zone, at) + costOfMute(player, sounding, at);
}

/**
 * What it costs to leave the stretch where a chair mostly lies.
 * @param player - the player
 * @param sounding - sounding pitch
 * @returns 1 for every three semitones outside home, begun ones counted
 * @source judgement
 */
export function costOfHome(player: Player, sounding: SoundingMidi): Count {
  return Math.ceil(outside(sounding, player.home) / SEMITONES_A_STEP_FROM_HOME);
}

/**
 * What it costs to ask more than the player's level makes easy.
 * @param player - the player
 * @param sounding - sounding pitch
 * @returns 4 for every semitone outside the easy range
 * @source cost C2, judgement
 */
export function costOfLevel(player: Player, sounding: SoundingMidi): Count {
  return COST_OUTSIDE_LEVEL * outside(sounding, player.easyRange);
}
