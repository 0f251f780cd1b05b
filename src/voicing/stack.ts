import { quantity, type Semitones, type SoundingMidi } from "../base/index.ts";
import type { Voicing } from "./voicing-types.ts";

/**
 * Distinct sounding pitches of a voicing.
 * @param voicing - who sounds what
 * @returns pitches low to high, each once; empty when nobody sounds
 */
export function stackOf(voicing: Voicing): readonly SoundingMidi[] {
  return [...new Set(voicing.placements.map((placement) => placement.sounding))].sort(
    (a, b) => a - b,
  );
}

/**
 * How far one pitch lies above another.
 * @param lower - the lower pitch
 * @param upper - the upper pitch
 * @returns semitones, negative when they are the other way round
 */
export function gapBetween(lower: SoundingMidi, upper: SoundingMidi): Semitones {
  return quantity(upper - lower);
}
