import type { Count } from "../../base/index.ts";
import type { Dynamic } from "../../band/index.ts";

/**
 * Key velocities of the dynamics, 1 to 127. Source: common practice of sequencers, no single
 * source; MusicXML 4.0 and General MIDI put forte near 90.
 */
export const velocityOf: Readonly<Record<Dynamic, Count>> = Object.freeze({
  ppp: 20,
  pp: 34,
  p: 48,
  mp: 62,
  mf: 76,
  f: 90,
  ff: 106,
  fff: 122,
});

/** Added for an accent or a marcato. Source: judgement. */
export const ACCENT_VELOCITY: Count = 14;
