import { seededChance } from "../base/index.ts";
import type { Cents, Count, Seconds } from "../base/index.ts";

/** The largest departure of a player's held pitch from equal temperament. */
export const PITCH_SCATTER_CENTS: Cents = 6 as Cents;
/** The largest departure of a player's onset from the intended one, either side. */
export const ONSET_SCATTER_SECONDS: Seconds = 0.012 as Seconds;

/**
 * A seed from a text and a number, the same on every machine.
 * @param text - for example a player's id
 * @param seed - seed of the plan
 * @returns whole number, 0 to 2^32 − 1
 * @source G. Fowler, L. C. Noll and K.-P. Vo, FNV-1a hash, 32 bits
 */
export function seedFrom(text: string, seed: Count): Count {
  let hash = (0x811c9dc5 ^ seed) >>> 0;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash ^ (hash >>> 15)) >>> 0;
}

/**
 * How far a player's held pitch lies from equal temperament: small departures are likelier.
 * @param seed - the player's seed for this note
 * @returns cents, within ±PITCH_SCATTER_CENTS, mean 0 over many seeds
 */
export function pitchScatter(seed: Count): Cents {
  return (PITCH_SCATTER_CENTS * triangular(seed ^ 0x5bd1e995)) as Cents;
}

/**
 * How late a player starts. Nobody can start before the plan does, so the whole spread is moved
 * to the late side: 0 is the earliest player, the middle player comes at ONSET_SCATTER_SECONDS.
 * @param seed - the player's seed for this note
 * @returns seconds, 0 to twice ONSET_SCATTER_SECONDS
 */
export function onsetScatter(seed: Count): Seconds {
  return (ONSET_SCATTER_SECONDS * (1 + triangular(seed ^ 0x1b873593))) as Seconds;
}

/** Sum of two even draws: −1 to 1, likeliest at 0. */
function triangular(seed: Count): number {
  const chance = seededChance(seed);
  return chance() + chance() - 1;
}
