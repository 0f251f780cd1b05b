/**
 * Loudness of the 1 kHz tone by its level, which defines loudness level. Columns: phon, sone.
 * @source ISO 532-2:2017, as its programme gives them (read in an open re-implementation)
 */
export const SONE_BY_PHON: readonly (readonly [phon: number, sone: number])[] = Object.freeze([
  [0, 0.00142],
  [2.2, 0.00382],
  [5, 0.01018],
  [10, 0.03132],
  [15, 0.07349],
  [20, 0.1462],
  [25, 0.25986],
  [30, 0.42748],
  [35, 0.66635],
  [40, 1.0],
  [45, 1.46046],
  [50, 2.09208],
  [55, 2.95659],
  [60, 4.14132],
  [65, 5.77265],
  [70, 8.03841],
  [75, 11.23047],
  [80, 15.84121],
  [85, 22.72],
  [90, 32.88313],
  [95, 47.71964],
  [100, 69.55788],
  [110, 150.90542],
  [120, 337.64141],
]);
