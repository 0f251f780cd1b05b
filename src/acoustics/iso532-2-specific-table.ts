/**
 * Excitation at the hearing threshold and gain of the cochlear amplifier at low frequencies, relative
 * to 500 Hz and above. Columns: frequency in Hz, threshold in dB, gain in dB. Between rows: straight
 * lines over Hz; outside: the end rows.
 * @source ISO 532-2:2017, specific loudness below 500 Hz (read in an open re-implementation)
 */
export const THRESHOLD_AND_GAIN: readonly (readonly [
  hz: number,
  thresholdDb: number,
  gainDb: number,
])[] = Object.freeze([
  [50, 27.46, -24.31],
  [63, 23.45, -20.3],
  [80, 18.47, -15.32],
  [100, 15.13, -11.98],
  [125, 11.97, -8.82],
  [160, 9.34, -6.19],
  [200, 7.43, -4.28],
  [250, 5.75, -2.6],
  [315, 4.73, -1.58],
  [400, 3.92, -0.77],
  [500, 3.15, 0],
]);

/**
 * Exponent of the loudness growth by gain. Columns: gain in dB, exponent.
 * @source ISO 532-2:2017, specific loudness below 500 Hz (read in an open re-implementation)
 */
export const EXPONENT_BY_GAIN: readonly (readonly [gainDb: number, exponent: number])[] =
  Object.freeze([
    [-25, 0.26692],
    [-20, 0.25016],
    [-15, 0.23679],
    [-10, 0.22228],
    [-5, 0.21055],
    [0, 0.2],
  ]);

/** Gain of the first constant below, dB. */
export const CONSTANT_FIRST_GAIN_DB = -25;
/** Gain from one constant to the next, dB. */
export const CONSTANT_GAIN_STEP_DB = 0.5;

/**
 * Constant A of the specific loudness by gain, -25 to 0 dB in steps of 0.5 dB.
 * @source ISO 532-2:2017, specific loudness below 500 Hz (read in an open re-implementation)
 */
export const CONSTANT_BY_GAIN: readonly number[] = Object.freeze([
  7.784, 7.667, 7.551, 7.435, 7.318, 7.21, 7.103, 6.996, 6.889, 6.782, 6.675, 6.596, 6.517, 6.438,
  6.36, 6.281, 6.202, 6.124, 6.047, 5.975, 5.902, 5.823, 5.744, 5.665, 5.587, 5.51, 5.437, 5.364,
  5.291, 5.218, 5.145, 5.086, 5.027, 4.972, 4.918, 4.863, 4.808, 4.754, 4.699, 4.644, 4.59, 4.542,
  4.496, 4.451, 4.405, 4.359, 4.314, 4.268, 4.222, 4.177, 4.131,
]);
