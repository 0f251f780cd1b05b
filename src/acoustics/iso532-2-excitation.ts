import type { ErbNumber, Hertz } from "../base/index.ts";
import { erbHz, erbNumberToHz } from "./erb.ts";
import type { CochlearInput } from "./iso532-2-cochlea.ts";
import { powerToDb } from "./levels.ts";
import { lowerSharpness, lowerSideFactor, roexWeight, upperSharpness } from "./roex-filter.ts";

/** Beyond this a filter passes less than 1e-15 of a component's power. */
const NEGLIGIBLE_STEEPNESS = 40;
const FIRST_CHANNEL_TENTHS = 18;
const LAST_CHANNEL_TENTHS = 389;

/** Distance of neighbouring auditory channels on the ERB-number scale, Cam. */
export const CHANNEL_STEP_CAM = 0.1;

/**
 * Centre frequencies of the standard's 372 auditory channels, 1.8 to 38.9 Cam.
 * @source ISO 532-2:2017
 */
export const CHANNEL_CENTRES_HZ: Float64Array = Float64Array.from(
  { length: LAST_CHANNEL_TENTHS - FIRST_CHANNEL_TENTHS + 1 },
  (_, index) => erbNumberToHz(((FIRST_CHANNEL_TENTHS + index) / 10) as ErbNumber),
);

/**
 * Factors on the lower side of the filters for components at a set of frequencies, from the level
 * of the whole input within one ERB around each.
 * @param whole - everything that reaches the cochlea
 * @param at - frequencies in Hz, n of them; those of the whole unless given
 * @returns n factors, 1 at 51 dB, smaller (flatter) above
 * @source ISO 532-2:2017
 */
export function lowerSideFactors(whole: CochlearInput, at: Float64Array = whole.hz): Float64Array {
  const { hz, power } = whole;
  return at.map((centre) => {
    const perHz = 4 / erbHz(centre as Hertz);
    let sum = 0;
    for (let index = 0; index < hz.length; index += 1) {
      const steepness = Math.abs(hz[index]! - centre) * perHz;
      if (steepness < NEGLIGIBLE_STEEPNESS) sum += power[index]! * roexWeight(steepness);
    }
    return lowerSideFactor(powerToDb(sum));
  });
}

/**
 * Excitation at a set of filters. The factors may come from a louder whole of which the components
 * are a part: the filters follow the total, the powers pass one by one.
 * @param input - components to pass, n of them
 * @param factors - lower-side factors, one a component
 * @param centres - centre frequencies of the filters in Hz, m of them
 * @returns m excitations as power re 0 dB
 * @source ISO 532-2:2017; B. C. J. Moore, B. R. Glasberg and T. Baer 1997 for parts of a whole
 */
export function excitationAt(
  input: CochlearInput,
  factors: Float64Array,
  centres: Float64Array,
): Float64Array {
  const { hz, power } = input;
  return centres.map((centre) => {
    const upper = upperSharpness(centre as Hertz);
    let sum = 0;
    for (let index = 0; index < hz.length; index += 1) {
      const distance = hz[index]! / centre - 1;
      const sharpness = distance >= 0 ? upper : lowerSharpness(centre as Hertz, factors[index]!);
      const steepness = sharpness * Math.abs(distance);
      if (steepness < NEGLIGIBLE_STEEPNESS) sum += power[index]! * roexWeight(steepness);
    }
    return sum;
  });
}

/**
 * Excitation pattern of a sound over the standard's 372 channels.
 * @param input - components at the cochlea
 * @returns 372 excitations as power re 0 dB
 * @source ISO 532-2:2017
 */
export function excitationPattern(input: CochlearInput): Float64Array {
  return excitationAt(input, lowerSideFactors(input), CHANNEL_CENTRES_HZ);
}
