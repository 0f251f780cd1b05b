import type { Hertz, SoundingMidi } from "./quantities.ts";

/**
 * Frequency of a sounding pitch in twelve-tone equal temperament.
 * @param midi - sounding MIDI note number; fractions are allowed for detuned players
 * @param a4Hz - frequency of A4 (MIDI 69), 440 Hz unless given
 * @returns frequency in Hz
 * @source ISO 16:1975 (A4 = 440 Hz)
 * @example midiToHz(69) // 440
 */
export function midiToHz(midi: SoundingMidi, a4Hz: Hertz = 440 as Hertz): Hertz {
  return (a4Hz * 2 ** ((midi - 69) / 12)) as Hertz;
}
