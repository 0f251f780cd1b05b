import type { DbSpl, Hertz, Phon } from "../base/index.ts";
import { EQUAL_LOUDNESS_2023 } from "./equal-loudness-2023-table.ts";
import { equalLoudnessRow } from "./equal-loudness-row.ts";

const REFERENCE_EXPONENT = 0.3;
const REFERENCE_POWER = 4e-10;
/** Threshold term of the 1 kHz tone. */
const REFERENCE_THRESHOLD = 10 ** 0.072;

function scaleOf(exponent: number): number {
  return REFERENCE_POWER ** (REFERENCE_EXPONENT - exponent);
}

/**
 * Level of a tone that is as loud as a 1 kHz tone of the given loudness level (contour point).
 * Valid from 20 to 90 phon up to 4 kHz and from 20 to 80 phon up to 12.5 kHz.
 * @param loudnessLevel - loudness level in phon
 * @param hz - one of the standard's 29 frequencies
 * @returns sound pressure level in dB
 * @throws RangeError at any other frequency
 * @source ISO 226:2023, formula (1)
 * @example phonToSpl2023(40, 63) // 73.0
 */
export function phonToSpl2023(loudnessLevel: Phon, hz: Hertz): DbSpl {
  const row = equalLoudnessRow(EQUAL_LOUDNESS_2023, hz);
  const { exponent, transferDb, thresholdDbSpl } = row;
  const grown = scaleOf(exponent) * (10 ** (0.03 * loudnessLevel) - REFERENCE_THRESHOLD);
  const threshold = 10 ** ((exponent * (thresholdDbSpl + transferDb)) / 10);
  return ((10 / exponent) * Math.log10(grown + threshold) - transferDb) as DbSpl;
}

/**
 * Loudness level of a tone.
 * @param level - sound pressure level in dB
 * @param hz - one of the standard's 29 frequencies
 * @returns loudness level in phon
 * @throws RangeError at any other frequency
 * @source ISO 226:2023, formula (2)
 * @example splToPhon2023(60, 63) // 21.6
 */
export function splToPhon2023(level: DbSpl, hz: Hertz): Phon {
  const row = equalLoudnessRow(EQUAL_LOUDNESS_2023, hz);
  const { exponent, transferDb, thresholdDbSpl } = row;
  const tone = 10 ** ((exponent * (level + transferDb)) / 10);
  const threshold = 10 ** ((exponent * (thresholdDbSpl + transferDb)) / 10);
  const ratio = (tone - threshold) / scaleOf(exponent) + REFERENCE_THRESHOLD;
  return ((100 / 3) * Math.log10(ratio)) as Phon;
}
