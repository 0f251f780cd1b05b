import type { Seconds, SoundingMidi } from "../base/index.ts";
import type { Decay } from "./decay-table.ts";

/**
 * Ringing time of a string's fundamental.
 * @param decay - table of the instrument
 * @param sounding - pitch; beyond the table's ends the end row holds
 * @returns time to fall by 60 dB
 */
export function ringingTime(decay: Decay, sounding: SoundingMidi): Seconds {
  const { rows } = decay;
  const above = rows.findIndex((candidate) => candidate.sounding >= sounding);
  if (above === 0) return rows[0]!.t60;
  if (above < 0) return rows[rows.length - 1]!.t60;
  const low = rows[above - 1]!;
  const high = rows[above]!;
  const share = (sounding - low.sounding) / (high.sounding - low.sounding);
  return (low.t60 * (high.t60 / low.t60) ** share) as Seconds;
}
