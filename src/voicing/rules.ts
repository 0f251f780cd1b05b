import type { SoundingMidi } from "../base/index.ts";
import { canSound, costOfRegister, instrumentOf, type Player } from "../band/index.ts";
import type { Harmony } from "./harmony.ts";
import { lowIntervalLimits } from "./low-interval-table.ts";
import { assumedBassUnder } from "./stack-costs.ts";
import type { Question } from "./voicing-types.ts";

/** Widest gap between neighbours, and of the lowest pair over a firm bottom. */
const widestGap = 12;
const widestLowestGap = 19;
/** Below this note only bass note, root and fifth may sound. */
const lowestColour = 50;
/** Cost of each semitone above a player's highest zone. */
const beyondZones = 4;

/** H6: two notes a minor ninth apart, root under flat ninth on a dominant excepted. */
export function isBadNinth(lower: number, upper: number, harmony: Harmony): boolean {
  if (upper - lower !== 13) return false;
  const isDominant = ["dominant", "altered-dominant", "dominant-suspended"].includes(
    harmony.chord.family,
  );
  return !(isDominant && harmony.aboveRoot(lower) === 0);
}

/** H9: a note that is too low for anything but bass note, root and fifth. */
export function isLowColour(midi: number, harmony: Harmony): boolean {
  if (midi >= lowestColour) return false;
  const role = harmony.role(midi);
  return role !== "R" && role !== "5" && harmony.aboveRoot(midi) !== harmony.bass;
}

/** Whether the lowest pair may be wider than an octave over this bottom note. */
export function isFirmBottom(midi: number, harmony: Harmony): boolean {
  const role = harmony.role(midi);
  return role === "R" || role === "5" || harmony.aboveRoot(midi) === harmony.bass;
}

/** Widest gap allowed between neighbours (H8). */
export function widestGapOver(
  lower: number,
  isLowest: boolean,
  notes: number,
  harmony: Harmony,
): number {
  return isLowest && (notes === 3 || isFirmBottom(lower, harmony)) ? widestLowestGap : widestGap;
}

/** Whether a player may be given a pitch under the rules as they are set (H3). */
export function mayPlay(player: Player, midi: SoundingMidi, question: Question): boolean {
  if (question.rules.H3) return canSound(player, midi);
  const compass = instrumentOf(player.instrument).range;
  return (
    midi >= Math.min(compass.low, player.range.low) &&
    midi <= Math.max(compass.high, player.range.high)
  );
}

/** H5b: the lowest note against the assumed bass below it. */
export function isBottomTooLow(midi: number, harmony: Harmony): boolean {
  const assumed = assumedBassUnder(midi, harmony);
  const limit = lowIntervalLimits.limits[midi - assumed] ?? 0;
  return midi - assumed !== 12 && assumed < limit - harmony.tolerance;
}

/** C1 without the home; above the highest zone, where only a lifted rule H3 leads, it goes on rising. */
export function registerCostOf(player: Player, midi: SoundingMidi, question: Question): number {
  const highest = player.zones[player.zones.length - 1]?.top ?? midi;
  if (midi <= highest) return costOfRegister(player, midi, question.dynamic);
  return costOfRegister(player, highest, question.dynamic) + beyondZones * (midi - highest);
}
