import type { ErbNumber, Hertz } from "../base/index.ts";

/** Constants of the scale as ISO 532-2:2017 writes them (24.7(4.37 f + 1) with more digits). */
const ERB_AT_ZERO_HZ = 24.673;
const PER_HZ = 0.004368;
const CAMS_PER_DECADE = 21.366;

/**
 * Equivalent rectangular bandwidth of the ear's filter at a frequency.
 * @param hz - centre frequency
 * @returns bandwidth in Hz
 * @source B. R. Glasberg and B. C. J. Moore 1990, Hearing Research 47, 103; digits of ISO 532-2:2017
 * @example erbHz(1000) // 132.4
 */
export function erbHz(hz: Hertz): Hertz {
  return (ERB_AT_ZERO_HZ * (PER_HZ * hz + 1)) as Hertz;
}

/**
 * Place on the ERB-number scale.
 * @param hz - frequency, 0 or more
 * @returns ERB number in Cam
 * @source Glasberg and Moore 1990; digits of ISO 532-2:2017
 * @example hzToErbNumber(1000) // 15.59
 */
export function hzToErbNumber(hz: Hertz): ErbNumber {
  return (CAMS_PER_DECADE * Math.log10(PER_HZ * hz + 1)) as ErbNumber;
}

/**
 * Frequency at a place on the ERB-number scale.
 * @param cam - ERB number
 * @returns frequency in Hz
 * @source inverse of {@link hzToErbNumber}
 */
export function erbNumberToHz(cam: ErbNumber): Hertz {
  return ((10 ** (cam / CAMS_PER_DECADE) - 1) / PER_HZ) as Hertz;
}
