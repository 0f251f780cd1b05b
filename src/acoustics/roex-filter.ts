import type { Hertz, Ratio } from "../base/index.ts";
import { erbHz } from "./erb.ts";

/** Level at which the ear's filter is symmetric, dB. */
const SYMMETRIC_LEVEL_DB = 51;
/** How fast the lower side flattens, per dB, for the filter at 1 kHz. */
const FLATTENING_PER_DB = 0.35;
/** Sharpness of the filter at 1 kHz and 51 dB. */
const SHARPNESS_AT_1_KHZ = (4 * 1000) / erbHz(1000 as Hertz);
/** Flattest lower side allowed. */
const LEAST_SHARPNESS = 0.1;

/**
 * Weight of a rounded-exponential filter.
 * @param steepness - sharpness times relative distance from the centre, 0 or more
 * @returns power weight, 1 at the centre
 * @source R. D. Patterson et al. 1982; Glasberg and Moore 1990
 */
export function roexWeight(steepness: Ratio): Ratio {
  return (1 + steepness) * Math.exp(-steepness);
}

/**
 * Sharpness of the filter's upper side, and of both sides at 51 dB.
 * @param centre - centre frequency of the filter
 * @returns sharpness p, no unit
 * @source ISO 532-2:2017
 * @example upperSharpness(1000) // 30.2
 */
export function upperSharpness(centre: Hertz): Ratio {
  return (4 * centre) / erbHz(centre);
}

/**
 * How much flatter (below 1) or steeper than symmetric the lower side passes a component.
 * @param level - level of the input within one ERB around the component, dB at the cochlea
 * @returns factor on the sharpness
 * @source ISO 532-2:2017
 * @example lowerSideFactor(51) // 1
 */
export function lowerSideFactor(level: Ratio): Ratio {
  return 1 - (FLATTENING_PER_DB / SHARPNESS_AT_1_KHZ) * (level - SYMMETRIC_LEVEL_DB);
}

/**
 * Sharpness of the filter's lower side for one component.
 * @param centre - centre frequency of the filter
 * @param factor - result of {@link lowerSideFactor} for the component
 * @returns sharpness p, never under 0.1
 * @source ISO 532-2:2017
 */
export function lowerSharpness(centre: Hertz, factor: Ratio): Ratio {
  return Math.max(LEAST_SHARPNESS, upperSharpness(centre) * factor);
}
