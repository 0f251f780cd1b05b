import { quantity, type SoundingMidi } from "../../../base/index.ts";
import { pitchName, type Chord } from "../../../theory/index.ts";

/**
 * A sounding pitch as its chord spells it.
 * @param midi - MIDI note number
 * @param chord - the chord
 * @returns "E♭4"
 */
export function spelled(midi: number, chord: Chord): string {
  return pitchName(quantity<SoundingMidi>(midi), chord, { signs: "unicode" });
}
