import { soundingMidi, type Count, type SoundingMidi } from "../../base/index.ts";
import { lowToHigh } from "./close.ts";

/**
 * Moves voices of a voicing down an octave.
 * @param voicing - pitches low to high, usually four-way close
 * @param fromTop - which voices, counted from the top; 1 is the lead
 * @returns the opened voicing, low to high
 * @throws RangeError when a voice is asked for that is not there
 * @source drop voicings: common practice; G. Lindsay, Jazz Arranging Techniques (2005)
 * @example dropVoices([60, 64, 67, 71], [2]) // [55, 60, 64, 71]
 */
export function dropVoices(
  voicing: readonly SoundingMidi[],
  fromTop: readonly Count[],
): readonly SoundingMidi[] {
  for (const voice of fromTop)
    if (!Number.isInteger(voice) || voice < 1 || voice > voicing.length)
      throw new RangeError(`voice from the top must be 1 to ${voicing.length}, got ${voice}`);
  return lowToHigh(
    voicing.map((pitch, index) =>
      fromTop.includes(voicing.length - index) ? soundingMidi(pitch - 12) : pitch,
    ),
  );
}
