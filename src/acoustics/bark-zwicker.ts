import type { Bark, Hertz } from "../base/index.ts";

const HIGHEST_HZ = 100_000;
const HALVINGS = 60;

/**
 * Critical-band rate after Zwicker and Terhardt.
 * @param hz - frequency, 0 or more
 * @returns critical-band rate in Bark
 * @source E. Zwicker and E. Terhardt 1980, JASA 68, 1523
 */
export function hzToBarkZwicker(hz: Hertz): Bark {
  const khz = hz / 1000;
  return (13 * Math.atan(0.76 * khz) + 3.5 * Math.atan((khz / 7.5) ** 2)) as Bark;
}

/**
 * Frequency at a critical-band rate after Zwicker and Terhardt, found by halving (the formula has
 * no closed inverse).
 * @param bark - critical-band rate, 0 to 25
 * @returns frequency in Hz
 * @throws RangeError outside 0 to 25 Bark
 * @source inverse of {@link hzToBarkZwicker}
 */
export function barkZwickerToHz(bark: Bark): Hertz {
  if (!(bark >= 0 && bark <= 25)) throw new RangeError(`Bark must be 0 to 25, got ${bark}`);
  let low = 0;
  let high = HIGHEST_HZ;
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    if (hzToBarkZwicker(middle as Hertz) < bark) low = middle;
    else high = middle;
  }
  return ((low + high) / 2) as Hertz;
}
