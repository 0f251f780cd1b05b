import type { DbSpl, Hertz, Phon } from "../base/index.ts";
import { EQUAL_LOUDNESS_2003 } from "./equal-loudness-2003-table.ts";
import { equalLoudnessRow } from "./equal-loudness-row.ts";

/** The tone's term in the standard's power law. */
function toneTerm(exponent: number, levelPlusTransferDb: number): number {
  return (0.4 * 10 ** (levelPlusTransferDb / 10 - 9)) ** exponent;
}

/**
 * Contour point of the superseded 2003 edition, kept to compare with older curves.
 * @param loudnessLevel - loudness level in phon
 * @param hz - one of the standard's 29 frequencies
 * @returns sound pressure level in dB
 * @throws RangeError at any other frequency
 * @source ISO 226:2003, formula (1)
 */
export function phonToSpl2003(loudnessLevel: Phon, hz: Hertz): DbSpl {
  const row = equalLoudnessRow(EQUAL_LOUDNESS_2003, hz);
  const { exponent, transferDb, thresholdDbSpl } = row;
  const grown = 4.47e-3 * (10 ** (0.025 * loudnessLevel) - 1.15);
  const term = grown + toneTerm(exponent, thresholdDbSpl + transferDb);
  return ((10 / exponent) * Math.log10(term) - transferDb + 94) as DbSpl;
}

/**
 * Loudness level by the 2003 edition. Its printed constants do not invert exactly: there and back
 * differs by .03 to .05 phon.
 * @param level - sound pressure level in dB
 * @param hz - one of the standard's 29 frequencies
 * @returns loudness level in phon
 * @throws RangeError at any other frequency
 * @source ISO 226:2003, formula (2)
 */
export function splToPhon2003(level: DbSpl, hz: Hertz): Phon {
  const row = equalLoudnessRow(EQUAL_LOUDNESS_2003, hz);
  const { exponent, transferDb, thresholdDbSpl } = row;
  const tone = toneTerm(exponent, level + transferDb);
  const threshold = toneTerm(exponent, thresholdDbSpl + transferDb);
  return (40 * Math.log10(tone - threshold + 0.005135) + 94) as Phon;
}
