import type { Hertz } from "../base/index.ts";

/**
 * Critical bandwidth as Hutchinson and Knopoff fitted it to the measurements of Plomp and Levelt
 * and of Cross.
 * @param hz - mean frequency of the two partials
 * @returns bandwidth in Hz
 * @source W. Hutchinson and L. Knopoff 1978, Interface 7, 1
 * @example criticalBandwidthHutchinson(420) // 87.2
 */
export function criticalBandwidthHutchinson(hz: Hertz): Hertz {
  return (1.72 * hz ** 0.65) as Hertz;
}

/**
 * Mean frequency whose critical bandwidth is this wide.
 * @param bandwidth - critical bandwidth in Hz
 * @returns frequency in Hz
 * @source inverse of {@link criticalBandwidthHutchinson}
 */
export function centreOfCriticalBandwidthHutchinson(bandwidth: Hertz): Hertz {
  return ((bandwidth / 1.72) ** (1 / 0.65)) as Hertz;
}
