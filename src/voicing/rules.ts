import { quantity, type Count, type Semitones, type SoundingMidi } from "../base/index.ts";
import { canSound, costOfRegister, instrumentOf, type Player } from "../band/index.ts";
import type { ChordFamily } from "../theory/index.ts";
import type { Harmony } from "./harmony.ts";
import { assumedBassUnder, underLimit } from "./stack-costs.ts";
import { gapBetween } from "./stack.ts";
import type { Question } from "./voicing-types.ts";

/** Widest gap between neighbours, and of the lowest pair over a firm bottom. */
const widestGap = quantity<Semitones>(12);
const widestLowestGap = quantity<Semitones>(19);
/** Below this note only bass note, root and fifth may sound. */
const lowestColour = 50;
/** Cost of each semitone above a player's highest zone. */
const beyondZones = 4;

const dominants: readonly ChordFamily[] = ["dominant", "altered-dominant", "dominant-suspended"];

/**
 * H6: whether two notes make a minor ninth that is not allowed.
 * @param lower - the lower note
 * @param upper - the upper note
 * @param harmony - the tones of the question
 * @returns true for a minor ninth, unless it is the ♭9 over the root of a dominant
 */
export function isBadNinth(lower: SoundingMidi, upper: SoundingMidi, harmony: Harmony): boolean {
  if (upper - lower !== 13) return false;
  return !(dominants.includes(harmony.chord.family) && harmony.aboveRoot(lower) === 0);
}

/**
 * H9: whether a note is too low for what it is.
 * @param midi - the note
 * @param harmony - the tones of the question
 * @returns true below D3 for anything but bass note, root and fifth
 */
export function isLowColour(midi: SoundingMidi, harmony: Harmony): boolean {
  return midi < lowestColour && !isFirmBottom(midi, harmony);
}

/**
 * Whether the lowest pair may be wider than an octave over this bottom note.
 * @param midi - the lowest note
 * @param harmony - the tones of the question
 * @returns true for bass note, root and fifth
 */
export function isFirmBottom(midi: SoundingMidi, harmony: Harmony): boolean {
  const role = harmony.role(midi);
  return role === "R" || role === "5" || harmony.aboveRoot(midi) === harmony.bass;
}

/**
 * H8: the widest gap allowed between neighbours.
 * @param lower - the lower of the two
 * @param isLowest - true when it is the lowest of the stack
 * @param notes - notes of the stack
 * @param harmony - the tones of the question
 * @returns an octave; a twelfth over a firm bottom, or for any lowest pair of three notes
 */
export function widestGapOver(
  lower: SoundingMidi,
  isLowest: boolean,
  notes: Count,
  harmony: Harmony,
): Semitones {
  return isLowest && (notes === 3 || isFirmBottom(lower, harmony)) ? widestLowestGap : widestGap;
}

/**
 * H3: whether a player may be given a pitch under the rules as they are set.
 * @param player - the player
 * @param midi - the pitch
 * @param question - its rules
 * @returns with the rule off, the instrument's compass decides
 */
export function mayPlay(player: Player, midi: SoundingMidi, question: Question): boolean {
  if (question.rules.H3) return canSound(player, midi);
  const compass = instrumentOf(player.instrument).range;
  return (
    midi >= Math.min(compass.low, player.range.low) &&
    midi <= Math.max(compass.high, player.range.high)
  );
}

/**
 * H5: whether a pair lies further under its low-interval limit than the dynamic allows.
 * @param lower - the lower note
 * @param upper - the upper note
 * @param harmony - the tones of the question, with the tolerance
 * @returns true when it does
 */
export function isTooLowTogether(
  lower: SoundingMidi,
  upper: SoundingMidi,
  harmony: Harmony,
): boolean {
  return underLimit(lower, gapBetween(lower, upper)) > harmony.tolerance;
}

/**
 * H5b: the same for the lowest note against the bass that is taken to sound below it.
 * @param midi - the lowest note
 * @param harmony - the tones of the question
 * @returns true when it lies too close over the bass
 */
export function isBottomTooLow(midi: SoundingMidi, harmony: Harmony): boolean {
  return isTooLowTogether(assumedBassUnder(midi, harmony), midi, harmony);
}

/**
 * C1 without the home: what a pitch costs a player by register.
 * @param player - the player
 * @param midi - the pitch
 * @param question - its dynamic
 * @returns 0 or more; above the highest zone, where only a lifted rule H3 leads, it goes on rising
 */
export function registerCostOf(player: Player, midi: SoundingMidi, question: Question): Count {
  const highest = player.zones[player.zones.length - 1]?.top ?? midi;
  if (midi <= highest) return costOfRegister(player, midi, question.dynamic);
  return costOfRegister(player, highest, question.dynamic) + beyondZones * (midi - highest);
}
