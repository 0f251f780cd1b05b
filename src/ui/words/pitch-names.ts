import { quantity, type SoundingMidi } from "../../base/index.ts";
import { degreeOf, pitchName, type Chord } from "../../theory/index.ts";

/** A sounding pitch as the question's chord spells it. */
export interface NamedPitch {
  /** ASCII, e.g. "Eb4". */
  readonly name: string;
  /** ASCII degree above the root, e.g. "b7". */
  readonly degree: string;
}

/** Names sounding pitches (MIDI note numbers) for one question. */
export type Namer = (sounding: number) => NamedPitch;

/**
 * Makes the namer of a chord.
 * @param chord - the chord that spells the pitches
 * @returns a function from sounding pitch to its name and degree in this chord
 */
export function namerOf(chord: Chord): Namer {
  return (sounding) => {
    const midi = quantity<SoundingMidi>(sounding);
    return { name: pitchName(midi, chord), degree: degreeOf(midi, chord) };
  };
}

const plainNames = ["C", "Db", "D", "Eb", "E", "F", "Gb", "G", "Ab", "A", "Bb", "B"];

/**
 * A sounding pitch without a chord, flats for the black keys.
 * @param sounding - MIDI note number
 * @returns e.g. "Eb4"
 */
export function plainName(sounding: number): string {
  const name = plainNames[((sounding % 12) + 12) % 12] ?? "C";
  return `${name}${Math.floor(sounding / 12) - 1}`;
}
