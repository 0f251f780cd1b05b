import type { Hertz, Ratio, Sone } from "../base/index.ts";
import { cochlearInput, type SoundField } from "./iso532-2-cochlea.ts";
import {
  CHANNEL_CENTRES_HZ,
  CHANNEL_STEP_CAM,
  excitationAt,
  lowerSideFactors,
} from "./iso532-2-excitation.ts";
import { CHANNEL_GROWTHS, TWO_EQUAL_EARS, type Listening } from "./iso532-2-loudness.ts";
import {
  compressed,
  SPECIFIC_LOUDNESS_SCALE,
  type ChannelGrowth,
} from "./iso532-2-specific-loudness.ts";
import { maskedThreshold } from "./masked-threshold.ts";
import { mixSpectra, type Spectrum } from "./spectrum.ts";

/** Excitations of a sound and of everything else, through filters that follow the total. */
export interface SplitExcitation {
  /** Power re 0 dB, one a centre. */
  readonly signal: Float64Array;
  readonly noise: Float64Array;
}

/**
 * Excitation of a sound and of the rest at a set of filters, both through the filters that the total
 * shapes.
 * @param signal - partials of the sound in question
 * @param rest - partials of all else
 * @param centres - centre frequencies in Hz, m of them
 * @param field - where the levels were taken
 * @returns m excitations of each
 * @source Moore, Glasberg and Baer 1997
 */
export function splitExcitation(
  signal: Spectrum,
  rest: Spectrum,
  centres: Float64Array,
  field: SoundField = "free",
): SplitExcitation {
  const whole = cochlearInput(mixSpectra([signal, rest]), field);
  const pass = (part: Spectrum): Float64Array => {
    const input = cochlearInput(part, field);
    return excitationAt(input, lowerSideFactors(whole, input.hz), centres);
  };
  return { signal: pass(signal), noise: pass(rest) };
}

/** Specific loudness of a signal above its masked threshold. */
function aboveThreshold(signal: Ratio, noise: Ratio, least: Ratio, growth: ChannelGrowth): Ratio {
  const whole = compressed(signal + noise, growth);
  const covered = compressed(noise + least, growth) - compressed(growth.threshold, growth);
  return whole - covered * (least / signal) ** 0.3;
}

/** Specific loudness of a signal below its masked threshold, falling fast. */
function belowThreshold(signal: Ratio, noise: Ratio, least: Ratio, growth: ChannelGrowth): Ratio {
  const quiet = compressed(noise, growth);
  const scale = compressed(growth.threshold, growth) / (compressed(noise + least, growth) - quiet);
  const loss = ((2 * signal) / (signal + least)) ** 1.5;
  return loss * scale * (compressed(signal + noise, growth) - quiet);
}

/**
 * Specific loudness of one sound among others, one ear, one channel.
 * @param signal - its excitation, power re 0 dB
 * @param noise - excitation of all else
 * @param centre - centre frequency of the channel
 * @param growth - the channel's growth
 * @returns sone per Cam
 * @source Moore, Glasberg and Baer 1997, with the constants of ISO 532-2:2017
 */
export function specificPartialLoudness(
  signal: Ratio,
  noise: Ratio,
  centre: Hertz,
  growth: ChannelGrowth,
): Ratio {
  if (signal <= 0) return 0;
  const least = maskedThreshold(centre, noise, growth.threshold);
  const grown = signal >= least ? aboveThreshold : belowThreshold;
  return SPECIFIC_LOUDNESS_SCALE * grown(signal, noise, least, growth);
}

/**
 * How loud one sound is heard among others. The model under-rates single instruments in music: use
 * it to rank and to compare, not as sones of a player.
 * @param signal - partials of the sound in question
 * @param rest - partials of all else; none gives the loudness in quiet
 * @param listening - field and ears
 * @returns partial loudness in sone
 * @source Moore, Glasberg and Baer 1997, JAES 45, 224, with the constants of ISO 532-2:2017
 */
export function partialLoudness(signal: Spectrum, rest: Spectrum, listening: Listening = {}): Sone {
  const split = splitExcitation(signal, rest, CHANNEL_CENTRES_HZ, listening.field);
  let sum = 0;
  for (let index = 0; index < CHANNEL_CENTRES_HZ.length; index += 1)
    sum += specificPartialLoudness(
      split.signal[index]!,
      split.noise[index]!,
      CHANNEL_CENTRES_HZ[index]! as Hertz,
      CHANNEL_GROWTHS[index]!,
    );
  const ears = listening.ears === "one" ? 1 : TWO_EQUAL_EARS;
  return (sum * CHANNEL_STEP_CAM * ears) as Sone;
}
