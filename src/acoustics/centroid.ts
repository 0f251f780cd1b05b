import type { Hertz } from "../base/index.ts";
import { dbToPower } from "./levels.ts";
import { ascending, checkSpectrum, type Spectrum } from "./spectrum.ts";

/** What a partial counts by. */
export type CentroidWeight = "amplitude" | "power";

/**
 * Spectral centroid: the balance point of a sound's partials, the usual measure of brightness.
 * @param spectrum - at least one sounding partial, any order
 * @param weight - sound pressure (usual) or power (follows the strong partials)
 * @returns frequency in Hz
 * @throws RangeError for a silent sound, which has no centroid
 * @source J. M. Grey and J. W. Gordon 1978, JASA 63, 1493 (amplitude form: common practice)
 * @example spectralCentroid(harmonics, "power")
 */
export function spectralCentroid(spectrum: Spectrum, weight: CentroidWeight): Hertz {
  const sorted = ascending(checkSpectrum(spectrum));
  let sum = 0;
  let moment = 0;
  for (const { hz, dbSpl } of sorted) {
    const power = dbToPower(dbSpl);
    const share = weight === "power" ? power : Math.sqrt(power);
    sum += share;
    moment += share * hz;
  }
  if (!(sum > 0))
    throw new RangeError("a silent sound has no centroid, got no partial that sounds");
  return (moment / sum) as Hertz;
}
