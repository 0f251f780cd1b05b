import type { Count } from "../base/index.ts";

/**
 * Cost and chair cost in one whole number: cost · chairScale + chair cost. The chair cost
 * (chair · (12 − depth), summed) stays far below the scale for up to 24 players.
 */
export const chairScale = 4096;

/** Depth from the top of the stack at which a lower chair costs nothing. */
export const chairDepth = 12;

/**
 * What one player on one note adds to the ranked value of a voicing.
 * @param cost - the player's own cost there
 * @param chair - chair inside the instrument, 0 to 3
 * @param depth - position of the note from the top of the stack, 0 the highest
 * @returns cost · chairScale + chair cost
 * @example rankOf(2, 1, 3) // 8201
 */
export function rankOf(cost: Count, chair: Count, depth: Count): Count {
  return cost * chairScale + chair * (chairDepth - depth);
}
