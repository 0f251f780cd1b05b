import type { Hertz, Ratio } from "../base/index.ts";
import { dbToPower } from "./levels.ts";
import type { Db } from "../base/index.ts";
import {
  CONSTANT_BY_GAIN,
  CONSTANT_FIRST_GAIN_DB,
  CONSTANT_GAIN_STEP_DB,
  EXPONENT_BY_GAIN,
  THRESHOLD_AND_GAIN,
} from "./iso532-2-specific-table.ts";
import { interpolate } from "./table-lookup.ts";

/** Sone per Cam of one ear. */
export const SPECIFIC_LOUDNESS_SCALE = 0.0617;
/** Excitation from which growth follows a plain power law. */
const HIGH_EXCITATION = 1e10;
const HIGH_DIVISOR = 1.0707;
const HIGH_EXPONENT = 0.2;

/** What makes an auditory channel's loudness grow: the standard's quantities at its frequency. */
export interface ChannelGrowth {
  /** Excitation at the hearing threshold, power re 0 dB. */
  readonly threshold: Ratio;
  readonly gain: Ratio;
  readonly exponent: Ratio;
  readonly constant: Ratio;
  /** The constant raised to the exponent, kept because every value needs it. */
  readonly floor: Ratio;
}

const CONSTANT_ROWS = CONSTANT_BY_GAIN.map(
  (constant, index) => [CONSTANT_FIRST_GAIN_DB + index * CONSTANT_GAIN_STEP_DB, constant] as const,
);

/**
 * Growth of loudness in the channel at a frequency.
 * @param centre - centre frequency; the tables hold from 50 Hz, and one row for 500 Hz and above
 * @returns threshold, gain, exponent and constant
 * @source ISO 532-2:2017
 */
export function channelGrowth(centre: Hertz): ChannelGrowth {
  const gainDb = interpolate(THRESHOLD_AND_GAIN, centre, 2);
  const exponent = interpolate(EXPONENT_BY_GAIN, gainDb);
  const constant = interpolate(CONSTANT_ROWS, gainDb);
  return {
    threshold: dbToPower(interpolate(THRESHOLD_AND_GAIN, centre, 1) as Db),
    gain: dbToPower(gainDb as Db),
    exponent,
    constant,
    floor: constant ** exponent,
  };
}

/**
 * Compressed excitation, before the scale and the loss near threshold.
 * @param excitation - power re 0 dB
 * @param growth - the channel's growth
 * @returns compressed value, 0 without excitation
 * @source ISO 532-2:2017
 */
export function compressed(excitation: Ratio, growth: ChannelGrowth): Ratio {
  if (excitation > HIGH_EXCITATION) return (excitation / HIGH_DIVISOR) ** HIGH_EXPONENT;
  return (growth.gain * excitation + growth.constant) ** growth.exponent - growth.floor;
}

/**
 * Specific loudness of one ear in one channel.
 * @param excitation - power re 0 dB
 * @param growth - the channel's growth
 * @returns sone per Cam
 * @source ISO 532-2:2017
 */
export function specificLoudness(excitation: Ratio, growth: ChannelGrowth): Ratio {
  const plain = SPECIFIC_LOUDNESS_SCALE * compressed(excitation, growth);
  if (excitation >= growth.threshold) return plain;
  return plain * ((2 * excitation) / (excitation + growth.threshold)) ** 1.5;
}
