import type { Db, Hertz } from "../base/index.ts";
import { dbToPower } from "./levels.ts";
import { ascending, checkSpectrum, type Spectrum } from "./spectrum.ts";
import { ISO_532_2_EAR } from "./iso532-2-ear-table.ts";
import { interpolate } from "./table-lookup.ts";

/**
 * Where the levels were taken: in front of a listener, in a room without direction, or at the
 * eardrum (an earphone calibrated there).
 */
export type SoundField = "free" | "diffuse" | "eardrum";

/** What reaches the inner ear: components in ascending frequency with their powers. */
export interface CochlearInput {
  readonly hz: Float64Array;
  /** Power re 0 dB SPL after outer and middle ear. */
  readonly power: Float64Array;
}

const LOWEST_HZ = 20;
const HIGHEST_HZ = 20_000;
const OUTER_COLUMN = { free: 1, diffuse: 2 } as const;
const MIDDLE_COLUMN = 3;

/**
 * What outer and middle ear add to a component's level.
 * @param hz - frequency
 * @param field - where the level was taken
 * @returns change of level, dB
 * @source ISO 532-2:2017, table 1
 * @example earTransfer(1000, "free") // 0
 */
export function earTransfer(hz: Hertz, field: SoundField): Db {
  const middle = interpolate(ISO_532_2_EAR, hz, MIDDLE_COLUMN);
  if (field === "eardrum") return middle as Db;
  return (middle + interpolate(ISO_532_2_EAR, hz, OUTER_COLUMN[field])) as Db;
}

/**
 * Brings a sound to the inner ear. Components below 20 Hz or above 20 kHz are left out, being
 * outside the standard's table. The result does not depend on the order of the partials.
 * @param spectrum - partials, any order
 * @param field - where the levels were taken
 * @returns components by ascending frequency
 * @throws RangeError for a partial that is none
 * @source ISO 532-2:2017
 */
export function cochlearInput(spectrum: Spectrum, field: SoundField = "free"): CochlearInput {
  const heard = checkSpectrum(spectrum).filter(
    ({ hz, dbSpl }) => hz >= LOWEST_HZ && hz <= HIGHEST_HZ && dbSpl > -Infinity,
  );
  const sorted = ascending(heard);
  return {
    hz: Float64Array.from(sorted, (partial) => partial.hz),
    power: Float64Array.from(sorted, ({ hz, dbSpl }) =>
      dbToPower((dbSpl + earTransfer(hz, field)) as Db),
    ),
  };
}
