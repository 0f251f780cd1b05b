import type { Cents, Count, Hertz, Ratio } from "../base/index.ts";
import { erbHz } from "./erb.ts";
import { setharesCurve } from "./roughness-sethares.ts";

const STOCK_HARMONICS: Count = 6;
const STOCK_DECAY: Ratio = 0.88;
/** Pitches closer than this are one note. */
const SAME_NOTE_CENTS = 50 as Cents;

/** From here a pair is muddy. */
export const MUDDY_FROM: Ratio = 0.87;
/** From here a pair is at the limit of what the trade allows. */
export const AT_LIMIT_FROM: Ratio = 0.7;

/** Words for a mud value. */
export type MudVerdict = "clear" | "at the limit" | "muddy";

/** Mud between two neighbouring notes. */
export interface MudPair {
  readonly low: Hertz;
  readonly high: Hertz;
  readonly value: Ratio;
}

/** Mud of a stack of notes. */
export interface Mud {
  /** Neighbouring pairs from the bottom up. */
  readonly pairs: readonly MudPair[];
  /** The pair to blame; null with fewer than two notes. */
  readonly worst: MudPair | null;
  /** Value of the worst pair, 0 without one. */
  readonly value: Ratio;
  readonly verdict: MudVerdict;
}

const STOCK_PRESSURES = Array.from({ length: STOCK_HARMONICS }, (_, index) => STOCK_DECAY ** index);

/** Sethares roughness between two stock notes, the smaller pressure of each pair counting. */
function stockRoughness(low: Hertz, high: Hertz): number {
  let sum = 0;
  for (let i = 0; i < STOCK_HARMONICS; i += 1)
    for (let j = 0; j < STOCK_HARMONICS; j += 1) {
      const [a, b] = [low * (i + 1), high * (j + 1)];
      const pressure = STOCK_PRESSURES[Math.max(i, j)]!;
      sum += pressure * (a <= b ? setharesCurve(a, b) : setharesCurve(b, a));
    }
  return sum;
}

/**
 * Mud between two notes: Sethares roughness between two stock notes of 6 harmonics with amplitudes
 * 0.88^(n-1), reduced by the square of their distance where the fundamentals lie more than one ERB
 * apart (the ear then keeps the two apart however rough they are). It leaves timbre and level out on
 * purpose: register and spacing alone decide.
 * @param low - lower fundamental
 * @param high - higher fundamental
 * @returns mud, about 0.4 in the middle register, above 0.87 muddy
 * @source roughness: W. A. Sethares 1993; measure and thresholds: definition of this project,
 *   calibrated on low and effective trombone voicings in twelve keys and on taught limits
 */
export function mudBetween(low: Hertz, high: Hertz): Ratio {
  const rough = stockRoughness(low, high);
  const bandwidths = (high - low) / erbHz(low);
  return bandwidths > 1 ? rough / bandwidths ** 2 : rough;
}

/**
 * Puts a mud value into words.
 * @param value - mud of the worst pair
 * @returns muddy from 0.87, at the limit from 0.70
 */
export function mudVerdict(value: Ratio): MudVerdict {
  if (value >= MUDDY_FROM) return "muddy";
  return value >= AT_LIMIT_FROM ? "at the limit" : "clear";
}

/** Ascending pitches, unisons counted once. */
function distinctAscending(pitches: readonly Hertz[]): Hertz[] {
  const same = 2 ** (SAME_NOTE_CENTS / 1200);
  return [...pitches]
    .sort((a, b) => a - b)
    .filter((hz, index, all) => index === 0 || hz > all[index - 1]! * same);
}

/**
 * Low-register mud of a stack of notes: the worst pair of neighbours.
 * @param pitches - fundamentals in any order, unisons allowed
 * @returns every neighbouring pair, the worst one and what it is called
 * @source as {@link mudBetween}
 * @example mud([65.41, 82.41]).verdict // "muddy"
 */
export function mud(pitches: readonly Hertz[]): Mud {
  const stack = distinctAscending(pitches);
  const pairs = stack.slice(1).map((high, index) => {
    const low = stack[index]!;
    return { low, high, value: mudBetween(low, high) };
  });
  const worst = pairs.reduce<MudPair | null>(
    (found, pair) => (found === null || pair.value > found.value ? pair : found),
    null,
  );
  const value = worst?.value ?? 0;
  return { pairs, worst, value, verdict: mudVerdict(value) };
}
