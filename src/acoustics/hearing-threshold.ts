import type { DbSpl, Hertz } from "../base/index.ts";
import { EQUAL_LOUDNESS_2023 } from "./equal-loudness-2023-table.ts";
import { equalLoudnessRow } from "./equal-loudness-row.ts";

/**
 * Threshold of hearing in quiet as a smooth curve.
 * @param hz - frequency above 0
 * @returns dB SPL in a free field
 * @source E. Terhardt 1979, Hearing Research 1, 155
 * @example hearingThresholdTerhardt(1000) // 3.37
 */
export function hearingThresholdTerhardt(hz: Hertz): DbSpl {
  const khz = hz / 1000;
  return (3.64 * khz ** -0.8 - 6.5 * Math.exp(-0.6 * (khz - 3.3) ** 2) + 0.001 * khz ** 4) as DbSpl;
}

/**
 * Threshold of hearing in quiet as the standard tabulates it.
 * @param hz - one of the standard's 29 frequencies
 * @returns dB SPL in a free field
 * @throws RangeError at any other frequency
 * @source ISO 226:2023, table 1
 */
export function hearingThresholdIso226(hz: Hertz): DbSpl {
  return equalLoudnessRow(EQUAL_LOUDNESS_2023, hz).thresholdDbSpl;
}
