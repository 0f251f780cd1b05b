import type { Hertz, Ratio, Sone } from "../base/index.ts";
import { binauralLoudness } from "./iso532-2-binaural.ts";
import { cochlearInput, type SoundField } from "./iso532-2-cochlea.ts";
import { CHANNEL_CENTRES_HZ, CHANNEL_STEP_CAM, excitationPattern } from "./iso532-2-excitation.ts";
import {
  channelGrowth,
  specificLoudness,
  type ChannelGrowth,
} from "./iso532-2-specific-loudness.ts";
import type { Spectrum } from "./spectrum.ts";

/** Loudness with two equal ears over one ear alone. */
export const TWO_EQUAL_EARS: Ratio = 1.5;

/** Growth of loudness in each of the standard's 372 channels. */
export const CHANNEL_GROWTHS: readonly ChannelGrowth[] = Array.from(CHANNEL_CENTRES_HZ, (centre) =>
  channelGrowth(centre as Hertz),
);

/** How a sound is listened to. */
export interface Listening {
  /** Where the levels were taken, a free field unless given. */
  readonly field?: SoundField;
  /** Both ears alike (unless given) or one ear only. */
  readonly ears?: "both" | "one";
}

/**
 * Specific loudness of one ear.
 * @param spectrum - partials, any order
 * @param field - where the levels were taken
 * @returns sone per Cam in 372 channels, 1.8 to 38.9 Cam
 * @source ISO 532-2:2017
 */
export function specificLoudnessPattern(
  spectrum: Spectrum,
  field: SoundField = "free",
): Float64Array {
  const excitation = excitationPattern(cochlearInput(spectrum, field));
  return excitation.map((value, index) => specificLoudness(value, CHANNEL_GROWTHS[index]!));
}

/**
 * Loudness of a steady sound.
 * @param spectrum - partials, any order; noise as partials in mid-cell of power-exact 10 Hz cells
 * @param listening - field and ears
 * @returns loudness in sone
 * @throws RangeError for a partial that is none
 * @source ISO 532-2:2017 (Moore-Glasberg), stationary sounds
 * @example loudnessIso5322([{ hz: 1000, dbSpl: 40 }]) // 1.000
 */
export function loudnessIso5322(spectrum: Spectrum, listening: Listening = {}): Sone {
  const pattern = specificLoudnessPattern(spectrum, listening.field);
  const oneEar = pattern.reduce((sum, value) => sum + value, 0) * CHANNEL_STEP_CAM;
  return (listening.ears === "one" ? oneEar : TWO_EQUAL_EARS * oneEar) as Sone;
}

/**
 * Loudness of a steady sound that differs between the ears.
 * @param left - partials at the left ear
 * @param right - partials at the right ear
 * @param field - where the levels were taken
 * @returns loudness in sone
 * @source ISO 532-2:2017
 */
export function loudnessIso5322Binaural(
  left: Spectrum,
  right: Spectrum,
  field: SoundField = "free",
): Sone {
  return binauralLoudness(
    specificLoudnessPattern(left, field),
    specificLoudnessPattern(right, field),
  );
}
