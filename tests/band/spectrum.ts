import type { Partial } from "../../src/band/index.ts";

/** Amplitude-weighted centroid up to 10 kHz, as the measured figures have it. */
export function brightnessHz(partials: readonly Partial[]): number {
  let [weighted, sum] = [0, 0];
  for (const { hz, dbSpl } of partials) {
    if (hz > 10_000) continue;
    const amplitude = 10 ** (dbSpl / 20);
    weighted += hz * amplitude;
    sum += amplitude;
  }
  return weighted / sum;
}

/** Level of all partials together, by their powers. */
export function totalDb(partials: readonly Partial[]): number {
  return 10 * Math.log10(partials.reduce((sum, { dbSpl }) => sum + 10 ** (dbSpl / 10), 0));
}

/** Power of partials 3, 5, 7 against 2, 4, 6, 8. */
export function oddOverEvenDb(partials: readonly Partial[]): number {
  const fundamental = partials[0]?.hz ?? NaN;
  let [odd, even] = [0, 0];
  for (const { hz, dbSpl } of partials) {
    const number = Math.round(hz / fundamental);
    if (number < 2 || number > 8) continue;
    if (number % 2 === 0) even += 10 ** (dbSpl / 10);
    else odd += 10 ** (dbSpl / 10);
  }
  return 10 * Math.log10(odd / even);
}
