/**
 * Measured swing. Source: A. Friberg & A. Sundström, Music Perception 19(3), 2002, and TMH-QPSR
 * 4/1997 (short note about 100 ms from medium to fast tempi; up to 3.5 when slow; even when fast);
 * horns' share: value from memory, a proposal.
 */
export const swingTable = Object.freeze({
  shortSeconds: 0.1,
  least: 1,
  most: 3.5,
  hornShare: 0.5,
});
