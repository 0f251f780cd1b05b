/**
 * Stationary loudness of Zwicker: tables of the standard (read in open re-implementations, not in
 * the standard itself).
 * @source ISO 532-1:2017, annex A
 */

/** Nominal centre frequencies of the 28 third-octave bands, Hz. */
export const THIRD_OCTAVE_CENTRES: readonly number[] = Object.freeze([
  25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600,
  2000, 2500, 3150, 4000, 5000, 6300, 8000, 10000, 12500,
]);

/**
 * Reductions of the lowest 11 bands by level. Columns: highest level in dB, reductions in dB for 25
 * to 250 Hz.
 */
export const LOW_BAND_REDUCTIONS: readonly (readonly [
  upToDb: number,
  reductionsDb: readonly number[],
])[] = Object.freeze([
  [45, [-32, -24, -16, -10, -5, 0, -7, -3, 0, -2, 0]],
  [55, [-29, -22, -15, -10, -4, 0, -7, -2, 0, -2, 0]],
  [65, [-27, -19, -14, -9, -4, 0, -6, -2, 0, -2, 0]],
  [71, [-25, -17, -12, -9, -3, 0, -5, -2, 0, -2, 0]],
  [80, [-23, -16, -11, -7, -3, 0, -4, -1, 0, -1, 0]],
  [90, [-20, -14, -10, -6, -3, 0, -4, -1, 0, -1, 0]],
  [100, [-18, -12, -9, -6, -2, 0, -3, -1, 0, -1, 0]],
  [120, [-15, -10, -8, -4, -2, 0, -3, -1, 0, -1, 0]],
]);

/**
 * The 20 critical bands. Columns: threshold in quiet in dB, transmission loss of the ear in dB,
 * diffuse minus free field in dB, adaptation of third-octave to critical band in dB, upper edge in
 * Bark.
 */
export const CRITICAL_BANDS: readonly (readonly [
  thresholdDb: number,
  lossDb: number,
  diffuseDb: number,
  adaptationDb: number,
  upperBark: number,
])[] = Object.freeze([
  [30, 0, 0, -0.25, 0.9],
  [18, 0, 0, -0.6, 1.8],
  [12, 0, 0.5, -0.8, 2.8],
  [8, 0, 0.9, -0.8, 3.5],
  [7, 0, 1.2, -0.5, 4.4],
  [6, 0, 1.6, 0, 5.4],
  [5, 0, 2.3, 0.5, 6.6],
  [4, 0, 2.8, 1.1, 7.9],
  [3, 0, 3, 1.5, 9.2],
  [3, 0, 2, 1.7, 10.6],
  [3, -0.5, 0, 1.8, 12.3],
  [3, -1.6, -1.4, 1.8, 13.8],
  [3, -3.2, -2, 1.7, 15.2],
  [3, -5.4, -1.9, 1.6, 16.7],
  [3, -5.6, -1, 1.4, 18.1],
  [3, -4, 0.5, 1.2, 19.3],
  [3, -1.5, 3, 0.8, 20.6],
  [3, 2, 4, 0.5, 21.8],
  [3, 5, 4.3, 0, 22.7],
  [3, 12, 4, -0.5, 23.6],
]);

/**
 * Steepness of the upper slopes. Columns: lower end of a range of specific loudness in sone/Bark,
 * steepness in sone/Bark per Bark for critical bands 2 to 8 and above (first column: the first two
 * bands).
 */
export const UPPER_SLOPES: readonly (readonly [
  fromSpecific: number,
  steepness: readonly number[],
])[] = Object.freeze([
  [21.5, [13, 8.2, 6.3, 5.5, 5.5, 5.5, 5.5, 5.5]],
  [18, [9, 7.5, 6, 5.1, 4.5, 4.5, 4.5, 4.5]],
  [15.1, [7.8, 6.7, 5.6, 4.9, 4.4, 3.9, 3.9, 3.9]],
  [11.5, [6.2, 5.4, 4.6, 4, 3.5, 3.2, 3.2, 3.2]],
  [9, [4.5, 3.8, 3.6, 3.2, 2.9, 2.7, 2.7, 2.7]],
  [6.1, [3.7, 3, 2.8, 2.35, 2.2, 2.2, 2.2, 2.2]],
  [4.4, [2.9, 2.3, 2.1, 1.9, 1.8, 1.7, 1.7, 1.7]],
  [3.1, [2.4, 1.7, 1.5, 1.35, 1.3, 1.3, 1.3, 1.3]],
  [2.13, [1.95, 1.45, 1.3, 1.15, 1.1, 1.1, 1.1, 1.1]],
  [1.36, [1.5, 1.2, 0.94, 0.86, 0.82, 0.82, 0.82, 0.82]],
  [0.82, [0.72, 0.67, 0.64, 0.63, 0.62, 0.62, 0.62, 0.62]],
  [0.42, [0.59, 0.53, 0.51, 0.5, 0.42, 0.42, 0.42, 0.42]],
  [0.3, [0.4, 0.33, 0.26, 0.24, 0.24, 0.22, 0.22, 0.22]],
  [0.22, [0.27, 0.21, 0.2, 0.18, 0.17, 0.17, 0.17, 0.17]],
  [0.15, [0.16, 0.15, 0.14, 0.12, 0.11, 0.11, 0.11, 0.11]],
  [0.1, [0.12, 0.11, 0.1, 0.08, 0.08, 0.08, 0.08, 0.08]],
  [0.035, [0.09, 0.08, 0.07, 0.06, 0.06, 0.06, 0.06, 0.05]],
  [0, [0.06, 0.05, 0.03, 0.02, 0.02, 0.02, 0.02, 0.02]],
]);
