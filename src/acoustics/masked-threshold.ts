import type { Db, Hertz, Ratio } from "../base/index.ts";
import { dbToPower } from "./levels.ts";

const FLAT_FROM_HZ = 1000;
const FLAT_DB = -3;
const LOWEST_HZ = 50;
/** Fit to the published curve over lg Hz, fourth power first. */
const CURVE = [4.46834, -49.68027, 212.89092, -418.88552, 317.07466] as const;

/**
 * Signal over noise at the output of a filter when a signal is just heard in steady noise.
 * @param hz - centre frequency of the filter
 * @returns ratio in dB, -3 from 1 kHz up, rising to 13.5 at 50 Hz and held below
 * @source B. C. J. Moore, B. R. Glasberg and T. Baer 1997, JAES 45, 224 (polynomial: a fit to the
 *   paper's figure in an open re-implementation)
 */
export function detectionRatio(hz: Hertz): Db {
  if (hz >= FLAT_FROM_HZ) return FLAT_DB as Db;
  const decades = Math.log10(Math.max(hz, LOWEST_HZ));
  return CURVE.reduce((sum, term) => sum * decades + term, 0) as Db;
}

/**
 * Excitation a signal needs to be just heard among others.
 * @param hz - centre frequency of the channel
 * @param noise - excitation of all other sounds, power re 0 dB
 * @param quiet - excitation at the hearing threshold in that channel
 * @returns excitation as power re 0 dB
 * @source Moore, Glasberg and Baer 1997
 */
export function maskedThreshold(hz: Hertz, noise: Ratio, quiet: Ratio): Ratio {
  return dbToPower(detectionRatio(hz)) * noise + quiet;
}
