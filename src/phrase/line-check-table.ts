/**
 * From where on a line check speaks up. Source: judgement; "count how often the top note returns, not
 * only its height": C. Clark, Developing the Middle School Lead Trumpet Player.
 */
export const lineCheckLimits = Object.freeze({
  /** A move is awkward from this cost on. */
  awkwardMove: 5,
  /** Share of a player's sounding time in tiring registers. */
  tiringShare: 0.25,
  /** Register cost at f from which a register counts as tiring. */
  tiringCost: 2,
});
