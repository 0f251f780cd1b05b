import type { EqualLoudnessRow } from "./equal-loudness-row.ts";

/**
 * Parameters of the equal-loudness contours, 2003 edition, 29 frequencies.
 * Columns: frequency in Hz, exponent, transfer magnitude in dB normalised at 1 kHz, hearing
 * threshold in dB SPL.
 * @source ISO 226:2003, table 1 (read in open re-implementations, not in the standard itself)
 */
export const EQUAL_LOUDNESS_2003 = Object.freeze([
  { hz: 20, exponent: 0.532, transferDb: -31.6, thresholdDbSpl: 78.5 },
  { hz: 25, exponent: 0.506, transferDb: -27.2, thresholdDbSpl: 68.7 },
  { hz: 31.5, exponent: 0.48, transferDb: -23, thresholdDbSpl: 59.5 },
  { hz: 40, exponent: 0.455, transferDb: -19.1, thresholdDbSpl: 51.1 },
  { hz: 50, exponent: 0.432, transferDb: -15.9, thresholdDbSpl: 44 },
  { hz: 63, exponent: 0.409, transferDb: -13, thresholdDbSpl: 37.5 },
  { hz: 80, exponent: 0.387, transferDb: -10.3, thresholdDbSpl: 31.5 },
  { hz: 100, exponent: 0.367, transferDb: -8.1, thresholdDbSpl: 26.5 },
  { hz: 125, exponent: 0.349, transferDb: -6.2, thresholdDbSpl: 22.1 },
  { hz: 160, exponent: 0.33, transferDb: -4.5, thresholdDbSpl: 17.9 },
  { hz: 200, exponent: 0.315, transferDb: -3.1, thresholdDbSpl: 14.4 },
  { hz: 250, exponent: 0.301, transferDb: -2, thresholdDbSpl: 11.4 },
  { hz: 315, exponent: 0.288, transferDb: -1.1, thresholdDbSpl: 8.6 },
  { hz: 400, exponent: 0.276, transferDb: -0.4, thresholdDbSpl: 6.2 },
  { hz: 500, exponent: 0.267, transferDb: 0, thresholdDbSpl: 4.4 },
  { hz: 630, exponent: 0.259, transferDb: 0.3, thresholdDbSpl: 3 },
  { hz: 800, exponent: 0.253, transferDb: 0.5, thresholdDbSpl: 2.2 },
  { hz: 1000, exponent: 0.25, transferDb: 0, thresholdDbSpl: 2.4 },
  { hz: 1250, exponent: 0.246, transferDb: -2.7, thresholdDbSpl: 3.5 },
  { hz: 1600, exponent: 0.244, transferDb: -4.1, thresholdDbSpl: 1.7 },
  { hz: 2000, exponent: 0.243, transferDb: -1, thresholdDbSpl: -1.3 },
  { hz: 2500, exponent: 0.243, transferDb: 1.7, thresholdDbSpl: -4.2 },
  { hz: 3150, exponent: 0.243, transferDb: 2.5, thresholdDbSpl: -6 },
  { hz: 4000, exponent: 0.242, transferDb: 1.2, thresholdDbSpl: -5.4 },
  { hz: 5000, exponent: 0.242, transferDb: -2.1, thresholdDbSpl: -1.5 },
  { hz: 6300, exponent: 0.245, transferDb: -7.1, thresholdDbSpl: 6 },
  { hz: 8000, exponent: 0.254, transferDb: -11.2, thresholdDbSpl: 12.6 },
  { hz: 10000, exponent: 0.271, transferDb: -10.7, thresholdDbSpl: 13.9 },
  { hz: 12500, exponent: 0.301, transferDb: -3.1, thresholdDbSpl: 12.3 },
]) as unknown as readonly EqualLoudnessRow[];
