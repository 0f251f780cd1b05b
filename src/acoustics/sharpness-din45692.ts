import type { Quantity } from "../base/index.ts";
import { loudnessIso5321, type ZwickerLoudness } from "./iso532-1-loudness.ts";
import type { Spectrum } from "./spectrum.ts";

/** Sharpness; 1 acum is a critical band of noise at 1 kHz and 60 dB. */
export type Acum = Quantity<"acum">;

const SCALE = 0.11;
const BENDS_AT_BARK = 15.8;
const STEP_BARK = 0.1;

/** Weight by which high channels sharpen a sound. */
function weightAt(bark: number): number {
  return bark <= BENDS_AT_BARK ? 1 : 0.15 * Math.exp(0.42 * (bark - BENDS_AT_BARK)) + 0.85;
}

/**
 * Sharpness from a loudness pattern.
 * @param zwicker - loudness and specific loudness at 0.1, 0.2 … 24 Bark
 * @returns acum, 0 for silence
 * @source DIN 45692:2009
 */
export function sharpnessOfPattern(zwicker: ZwickerLoudness): Acum {
  if (!(zwicker.loudness > 0)) return 0 as Acum;
  const moment = zwicker.specific.reduce((sum, value, index) => {
    const bark = (index + 1) * STEP_BARK;
    return sum + value * weightAt(bark) * bark * STEP_BARK;
  }, 0);
  return ((SCALE * moment) / zwicker.loudness) as Acum;
}

/**
 * Sharpness of a steady sound: how bright or piercing it is, nearly without regard to loudness.
 * @param spectrum - partials, any order
 * @returns acum
 * @source DIN 45692:2009 on the specific loudness of ISO 532-1:2017
 */
export function sharpnessDin45692(spectrum: Spectrum): Acum {
  return sharpnessOfPattern(loudnessIso5321(spectrum));
}
