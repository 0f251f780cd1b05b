import type { Db, DbSpl, Hertz, Ratio } from "../base/index.ts";

/** One of the 29 frequencies for which ISO 226 gives parameters. */
export interface EqualLoudnessRow {
  readonly hz: Hertz;
  readonly exponent: Ratio;
  /** Magnitude of the transfer to the ear, normalised at 1 kHz. */
  readonly transferDb: Db;
  readonly thresholdDbSpl: DbSpl;
}

/**
 * Row of a table at one of the standard's frequencies; the standard fixes no interpolation.
 * @param table - rows of one edition
 * @param hz - one of the 29 third-octave frequencies from 20 to 12500 Hz
 * @returns the row
 * @throws RangeError at any other frequency
 */
export function equalLoudnessRow(table: readonly EqualLoudnessRow[], hz: Hertz): EqualLoudnessRow {
  const row = table.find((candidate) => candidate.hz === hz);
  if (row === undefined)
    throw new RangeError(
      `ISO 226 gives 29 third-octave frequencies from 20 to 12500 Hz, got ${hz}`,
    );
  return row;
}
