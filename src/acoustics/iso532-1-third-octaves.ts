import type { Db, DbSpl } from "../base/index.ts";
import { dbToPower, powerToDb } from "./levels.ts";
import { THIRD_OCTAVE_CENTRES } from "./iso532-1-table.ts";
import { ascending, checkSpectrum, type Spectrum } from "./spectrum.ts";

const HALF_BAND = 10 ** 0.05;
/** Exact base-ten centre of the band nearest 1 kHz is 1 kHz, ten bands a decade. */
const INDEX_OF_1_KHZ = THIRD_OCTAVE_CENTRES.indexOf(1000);

/** Share of a partial's power that a band passes: a third-order Butterworth third-octave. */
function passed(hz: number, centre: number): number {
  const offset = Math.abs(hz / centre - centre / hz) / (HALF_BAND - 1 / HALF_BAND);
  return 1 / (1 + offset ** 6);
}

/**
 * Third-octave levels of partials as filters with skirts give them. One bin a partial would read 2
 * to 13 % too little loudness.
 * @param spectrum - partials, any order
 * @returns 28 levels in dB SPL, 25 Hz to 12.5 kHz
 * @source filter order as in IEC 61260 class 1 practice; needed by ISO 532-1:2017
 */
export function thirdOctaveLevels(spectrum: Spectrum): readonly DbSpl[] {
  const sorted = ascending(checkSpectrum(spectrum));
  return THIRD_OCTAVE_CENTRES.map((_, index) => {
    const centre = 1000 * 10 ** ((index - INDEX_OF_1_KHZ) / 10);
    const power = sorted.reduce(
      (sum, { hz, dbSpl }) => sum + passed(hz, centre) * dbToPower(dbSpl),
      0,
    );
    return powerToDb(power) as Db as number as DbSpl;
  });
}
