import type { EqualLoudnessRow } from "./equal-loudness-row.ts";

/**
 * Parameters of the equal-loudness contours, 2023 edition, 29 frequencies.
 * Columns: frequency in Hz, exponent, transfer magnitude in dB normalised at 1 kHz, hearing
 * threshold in dB SPL.
 * @source ISO 226:2023, table 1 (read in open re-implementations, not in the standard itself)
 */
export const EQUAL_LOUDNESS_2023 = Object.freeze([
  { hz: 20, exponent: 0.635, transferDb: -31.5, thresholdDbSpl: 78.1 },
  { hz: 25, exponent: 0.602, transferDb: -27.2, thresholdDbSpl: 68.7 },
  { hz: 31.5, exponent: 0.569, transferDb: -23.1, thresholdDbSpl: 59.5 },
  { hz: 40, exponent: 0.537, transferDb: -19.3, thresholdDbSpl: 51.1 },
  { hz: 50, exponent: 0.509, transferDb: -16.1, thresholdDbSpl: 44 },
  { hz: 63, exponent: 0.482, transferDb: -13.1, thresholdDbSpl: 37.5 },
  { hz: 80, exponent: 0.456, transferDb: -10.4, thresholdDbSpl: 31.5 },
  { hz: 100, exponent: 0.433, transferDb: -8.2, thresholdDbSpl: 26.5 },
  { hz: 125, exponent: 0.412, transferDb: -6.3, thresholdDbSpl: 22.1 },
  { hz: 160, exponent: 0.391, transferDb: -4.6, thresholdDbSpl: 17.9 },
  { hz: 200, exponent: 0.373, transferDb: -3.2, thresholdDbSpl: 14.4 },
  { hz: 250, exponent: 0.357, transferDb: -2.1, thresholdDbSpl: 11.4 },
  { hz: 315, exponent: 0.343, transferDb: -1.2, thresholdDbSpl: 8.6 },
  { hz: 400, exponent: 0.33, transferDb: -0.5, thresholdDbSpl: 6.2 },
  { hz: 500, exponent: 0.32, transferDb: 0, thresholdDbSpl: 4.4 },
  { hz: 630, exponent: 0.311, transferDb: 0.4, thresholdDbSpl: 3 },
  { hz: 800, exponent: 0.303, transferDb: 0.5, thresholdDbSpl: 2.2 },
  { hz: 1000, exponent: 0.3, transferDb: 0, thresholdDbSpl: 2.4 },
  { hz: 1250, exponent: 0.295, transferDb: -2.7, thresholdDbSpl: 3.5 },
  { hz: 1600, exponent: 0.292, transferDb: -4.2, thresholdDbSpl: 1.7 },
  { hz: 2000, exponent: 0.29, transferDb: -1.2, thresholdDbSpl: -1.3 },
  { hz: 2500, exponent: 0.29, transferDb: 1.4, thresholdDbSpl: -4.2 },
  { hz: 3150, exponent: 0.289, transferDb: 2.3, thresholdDbSpl: -6 },
  { hz: 4000, exponent: 0.289, transferDb: 1, thresholdDbSpl: -5.4 },
  { hz: 5000, exponent: 0.289, transferDb: -2.3, thresholdDbSpl: -1.5 },
  { hz: 6300, exponent: 0.293, transferDb: -7.2, thresholdDbSpl: 6 },
  { hz: 8000, exponent: 0.303, transferDb: -11.2, thresholdDbSpl: 12.6 },
  { hz: 10000, exponent: 0.323, transferDb: -10.9, thresholdDbSpl: 13.9 },
  { hz: 12500, exponent: 0.354, transferDb: -3.5, thresholdDbSpl: 12.3 },
]) as unknown as readonly EqualLoudnessRow[];
