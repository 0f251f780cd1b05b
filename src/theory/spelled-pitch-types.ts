import type { PitchClass, SoundingMidi } from "../base/index.ts";

/** Letter name of a pitch. */
export type Letter = "C" | "D" | "E" | "F" | "G" | "A" | "B";

/** A spelled pitch class: E♭ is not D♯. */
export interface SpelledPitchClass {
  readonly letter: Letter;
  /** Semitones added to the letter: −2 double flat to 2 double sharp. */
  readonly alteration: number;
}

/** A spelled pitch in an octave; C4 is middle C. The octave belongs to the letter: C♭4 sounds B3. */
export interface SpelledPitch extends SpelledPitchClass {
  readonly octave: number;
}

/** A spelled pitch with the key it sounds on. */
export interface ReadPitch {
  readonly spelled: SpelledPitch;
  readonly sounding: SoundingMidi;
  readonly pitchClass: PitchClass;
}
