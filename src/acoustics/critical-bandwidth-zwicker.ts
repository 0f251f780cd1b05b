import type { Hertz } from "../base/index.ts";

/**
 * Critical bandwidth after Zwicker and Terhardt.
 * @param hz - centre frequency
 * @returns bandwidth in Hz, never under 100
 * @source E. Zwicker and E. Terhardt 1980, JASA 68, 1523
 * @example criticalBandwidthZwicker(1000) // 162.2
 */
export function criticalBandwidthZwicker(hz: Hertz): Hertz {
  const khz = hz / 1000;
  return (25 + 75 * (1 + 1.4 * khz * khz) ** 0.69) as Hertz;
}

/**
 * Frequency whose critical bandwidth is this wide.
 * @param bandwidth - critical bandwidth in Hz, 100 or more
 * @returns centre frequency in Hz
 * @throws RangeError under 100 Hz, narrower than any critical band
 * @source inverse of {@link criticalBandwidthZwicker}
 */
export function centreOfCriticalBandwidthZwicker(bandwidth: Hertz): Hertz {
  if (!(bandwidth >= 100))
    throw new RangeError(`a critical band after Zwicker is at least 100 Hz wide, got ${bandwidth}`);
  const grown = ((bandwidth - 25) / 75) ** (1 / 0.69);
  return (1000 * Math.sqrt(Math.max(0, grown - 1) / 1.4)) as Hertz;
}
