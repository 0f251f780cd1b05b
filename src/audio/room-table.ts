import type { Ratio, Seconds } from "../base/index.ts";

/** A reflection from a wall: when it comes, how strong, from which side's send. */
export interface Reflection {
  readonly delay: Seconds;
  readonly gain: Ratio;
  readonly from: "left" | "right";
}

const reflection = (ms: number, gain: Ratio, from: "left" | "right"): Reflection =>
  Object.freeze({ delay: (ms / 1000) as Seconds, gain, from });

/**
 * A treated rehearsal room of about 400 m³ (shoebox 10 × 9 × 4.4 m): first reflections of floor,
 * ceiling and walls by the image-source method (J. B. Allen and D. A. Berkley, 1979) for a source
 * and a listener off the middle, rounded; the two ears get different delays so that no colour of
 * the sum stands out. All gains are positive: a reflection never turns the direct sound over.
 */
export const LEFT_REFLECTIONS: readonly Reflection[] = Object.freeze([
  reflection(4.3, 0.62, "left"),
  reflection(9.1, 0.5, "right"),
  reflection(13.7, 0.46, "left"),
  reflection(19.9, 0.36, "right"),
  reflection(26.3, 0.28, "left"),
]);
/** The same for the right ear, later and earlier by a little. */
export const RIGHT_REFLECTIONS: readonly Reflection[] = Object.freeze([
  reflection(5.2, 0.6, "right"),
  reflection(8.3, 0.5, "left"),
  reflection(15.1, 0.44, "right"),
  reflection(18.4, 0.38, "left"),
  reflection(28.7, 0.26, "right"),
]);

/** Lengths of the eight delay lines of the tail; without common factors at 48 kHz. */
export const TAIL_DELAYS: readonly Seconds[] = Object.freeze(
  [8.396, 9.979, 11.604, 13.229, 15.021, 17.271, 19.479, 21.896].map(
    (ms) => (ms / 1000) as Seconds,
  ),
);
/** Reverberation time of the tail at middle frequencies: rehearsal and recording rooms, dry end. */
export const TAIL_T60: Seconds = 0.4 as Seconds;
/** Reverberation time at the highest frequencies, where air and curtains take more. */
export const TAIL_T60_HIGH: Seconds = 0.22 as Seconds;
/** When the tail sets in, after the first reflections. */
export const TAIL_ONSET: Seconds = 0.012 as Seconds;
/** Energy of the tail against that of the first reflections. */
export const TAIL_SHARE: Ratio = 1;
/**
 * Distance at which a player's room sound is as strong as the direct sound, metres:
 * 0.057·√(Q·V/T) with V = 400 m³, T = 0.4 s and Q = 4 for a horn that points forward.
 */
export const CRITICAL_DISTANCE_M = 3.6;
