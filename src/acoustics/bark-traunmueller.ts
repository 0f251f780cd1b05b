import type { Bark, Hertz } from "../base/index.ts";

/**
 * Critical-band rate after Traunmüller, with his corrections at both ends.
 * @param hz - frequency, 0 to about 15500 Hz
 * @returns critical-band rate in Bark
 * @source H. Traunmüller 1990, JASA 88, 97
 * @example hzToBarkTraunmueller(1000) // 8.53
 */
export function hzToBarkTraunmueller(hz: Hertz): Bark {
  const plain = (26.81 * hz) / (1960 + hz) - 0.53;
  if (plain < 2) return (plain + 0.15 * (2 - plain)) as Bark;
  if (plain > 20.1) return (plain + 0.22 * (plain - 20.1)) as Bark;
  return plain as Bark;
}

/**
 * Frequency at a critical-band rate after Traunmüller.
 * @param bark - critical-band rate
 * @returns frequency in Hz
 * @source inverse of {@link hzToBarkTraunmueller}, corrections undone first
 */
export function barkTraunmuellerToHz(bark: Bark): Hertz {
  let plain: number = bark;
  if (bark < 2) plain = (bark - 0.3) / 0.85;
  if (bark > 20.1) plain = (bark + 0.22 * 20.1) / 1.22;
  return ((1960 * (plain + 0.53)) / (26.28 - plain)) as Hertz;
}
