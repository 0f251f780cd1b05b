import type { Db, DbFs, DbSpl, Gain, Quantity } from "../base/index.ts";

/**
 * Level of a sine at 1 m, in dB SPL, whose peak just reaches digital full scale. The one constant
 * between air and numbers: chosen so that thirteen horns at fff need the limiter only on their
 * highest peaks while one flute at pp stays well above the noise of a 16-bit file.
 */
export const FULL_SCALE_DB_SPL: DbSpl = 117 as DbSpl;

/**
 * Level difference as a linear amplitude factor.
 * @param level - any number of decibels
 * @returns gain, 0 to infinity; 0 dB gives 1
 * @example dbToGain(-20) // 0.1
 */
export function dbToGain(level: Db | DbFs | Quantity<"dBTP">): Gain {
  return (10 ** (level / 20)) as Gain;
}

/**
 * Linear amplitude as a level re full scale.
 * @param gain - amplitude, 0 or more
 * @returns dB; minus infinity for 0
 * @example gainToDb(0.1) // -20
 */
export function gainToDb(gain: Gain): DbFs {
  return (20 * Math.log10(gain)) as DbFs;
}

/**
 * Peak amplitude, in digital units, of a sine heard at a level.
 * @param level - dB SPL (rms) at the distance the timbre states, 1 m
 * @returns peak amplitude of the sine; 1 at FULL_SCALE_DB_SPL
 */
export function dbSplToPeak(level: DbSpl): Gain {
  return (10 ** ((level - FULL_SCALE_DB_SPL) / 20)) as Gain;
}

/**
 * The level in air that a digital peak amplitude stands for.
 * @param peak - peak amplitude of a sine, digital units
 * @returns dB SPL (rms) at 1 m
 */
export function peakToDbSpl(peak: Gain): DbSpl {
  return (FULL_SCALE_DB_SPL + 20 * Math.log10(peak)) as DbSpl;
}
