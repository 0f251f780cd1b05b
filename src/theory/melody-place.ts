import { quantity, type Count } from "../base/index.ts";
import type { Divisions, Melody, MelodyPlace, Metre } from "./melody-types.ts";

/** What the place of a time needs to know of a melody. */
export type MelodyTime = Pick<Melody, "division" | "metre" | "pickup">;

/** Bars of six, nine and twelve eighths are counted in dotted beats. */
function isCompound({ beats, beatType }: Metre): boolean {
  return beatType >= 8 && beats > 3 && beats % 3 === 0;
}

/**
 * Length of a full bar.
 * @param time - division and metre
 * @returns divisions; a fraction when the division is too coarse for the metre
 * @example barLength({ division: 12, metre: { beats: 3, beatType: 4 }, pickup: 0 }) // 36
 */
export function barLength({ division, metre }: MelodyTime): Divisions {
  return quantity((metre.beats * 4 * division) / metre.beatType);
}

/**
 * Length of a beat as players count it: a dotted quarter in 6/8.
 * @param time - division and metre
 * @returns divisions
 * @source compound metres are counted in threes: common practice, no single source
 * @example beatLength({ division: 12, metre: { beats: 6, beatType: 8 }, pickup: 0 }) // 18
 */
export function beatLength({ division, metre }: MelodyTime): Divisions {
  const note = (4 * division) / metre.beatType;
  return quantity(isCompound(metre) ? 3 * note : note);
}

/**
 * Where a bar begins.
 * @param time - division, metre, pickup
 * @param bar - 0 for the pickup, else from 1
 * @returns divisions from the start of the melody
 */
export function barStart(time: MelodyTime, bar: Count): Divisions {
  return quantity(bar === 0 ? 0 : time.pickup + (bar - 1) * barLength(time));
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

/**
 * Bar and beat of a time.
 * @param time - division, metre, pickup
 * @param onset - divisions from the start of the melody
 * @returns bar, beat and part of the beat
 */
export function placeOf(time: MelodyTime, onset: Divisions): MelodyPlace {
  const length = barLength(time);
  const isInPickup = onset < time.pickup;
  const bar = isInPickup ? 0 : 1 + Math.floor((onset - time.pickup) / length);
  const within = isInPickup ? length - time.pickup + onset : (onset - time.pickup) % length;
  const beat = beatLength(time);
  const rest = within % beat;
  const common = rest === 0 ? beat : greatestCommon(rest, beat);
  return { bar, beat: 1 + Math.floor(within / beat), part: [rest / common, beat / common] };
}

/**
 * A time as players say it.
 * @param time - division, metre, pickup
 * @param onset - divisions from the start of the melody
 * @returns "bar 3, beat 2", "bar 3, the and of 2", "bar 3, 1/3 past beat 2", "the pickup, beat 4"
 */
export function placeText(time: MelodyTime, onset: Divisions): string {
  const { bar, beat, part } = placeOf(time, onset);
  const where = bar === 0 ? "the pickup" : `bar ${bar}`;
  const [numerator, denominator] = part;
  if (numerator === 0) return `${where}, beat ${beat}`;
  if (numerator === 1 && denominator === 2) return `${where}, the and of ${beat}`;
  return `${where}, ${numerator}/${denominator} past beat ${beat}`;
}

/**
 * How many full bars a melody has, the pickup not counted.
 * @param melody - the melody
 * @returns bars; a last bar that is begun counts
 */
export function barCount(melody: Melody): Count {
  return Math.max(0, Math.ceil((melody.length - melody.pickup) / barLength(melody)));
}
