import type { Phon, Sone } from "../base/index.ts";
import { SONE_BY_PHON } from "./iso532-2-sone-phon-table.ts";
import { interpolate } from "./table-lookup.ts";

const LOG_ROWS = SONE_BY_PHON.map(([phon, sone]) => [Math.log10(sone), phon] as const);
const PHON_ROWS = SONE_BY_PHON.map(([phon, sone]) => [phon, Math.log10(sone)] as const);

/**
 * Loudness level of a loudness: level of the 1 kHz tone that is as loud. Between the table's rows
 * straight lines over the logarithm (within 0.2 phon from 10 phon up); held at 0 and 120 phon.
 * @param loudness - sone, 0 or more
 * @returns phon, 0 to 120
 * @source ISO 532-2:2017
 * @example soneToPhon5322(1) // 40
 */
export function soneToPhon5322(loudness: Sone): Phon {
  return interpolate(LOG_ROWS, Math.log10(loudness)) as Phon;
}

/**
 * Loudness of a loudness level, the way back.
 * @param loudnessLevel - phon, 0 to 120
 * @returns sone
 * @source ISO 532-2:2017
 */
export function phonToSone5322(loudnessLevel: Phon): Sone {
  return (10 ** interpolate(PHON_ROWS, loudnessLevel)) as Sone;
}
