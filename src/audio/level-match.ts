import type { Db } from "../base/index.ts";
import type { Lufs } from "./audio-units.ts";

/** Loudness that compared voicings are brought to: moderate, with room for peaks. */
export const MATCH_TARGET_LUFS: Lufs = -20 as Lufs;

/**
 * Gain that brings a recording to a loudness, so that louder does not win by being louder.
 * @param measured - integrated loudness of the three-second sustained render
 * @param target - loudness wanted, MATCH_TARGET_LUFS unless given
 * @returns level change in dB; 0 for silence, which no gain can bring anywhere
 */
export function levelMatchGain(measured: Lufs, target: Lufs = MATCH_TARGET_LUFS): Db {
  return (Number.isFinite(measured) ? target - measured : 0) as Db;
}
