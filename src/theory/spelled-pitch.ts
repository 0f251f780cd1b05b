import {
  pitchClass,
  soundingMidi,
  type Count,
  type PitchClass,
  type SoundingMidi,
} from "../base/index.ts";
import { LETTERS, LETTER_SEMITONES } from "./letter-table.ts";
import { accidentalText, type SignStyle } from "./signs.ts";
import type { Letter, SpelledPitch, SpelledPitchClass } from "./spelled-pitch-types.ts";

/** How a pitch is printed. */
export interface PitchFormat {
  /** `ascii` (b, #) unless said otherwise. */
  readonly signs?: SignStyle;
}

/**
 * Pitch class that a spelling sounds.
 * @param spelled - letter and alteration
 * @returns 0 to 11
 * @example spelledPitchClass({ letter: "C", alteration: -1 }) // 11
 */
export function spelledPitchClass(spelled: SpelledPitchClass): PitchClass {
  return pitchClass(LETTER_SEMITONES[spelled.letter] + spelled.alteration);
}

/**
 * Sounding MIDI note number of a spelled pitch. The octave belongs to the letter: C♭4 sounds B3.
 * @param spelled - letter, alteration, octave (C4 is middle C)
 * @returns MIDI note number, 0 to 127
 * @throws RangeError when the pitch lies outside 0 to 127
 * @example spelledToMidi({ letter: "B", alteration: -1, octave: 4 }) // 70
 */
export function spelledToMidi(spelled: SpelledPitch): SoundingMidi {
  const { letter, alteration, octave } = spelled;
  return soundingMidi(12 * (octave + 1) + LETTER_SEMITONES[letter] + alteration);
}

/**
 * Prints a spelled pitch class.
 * @param spelled - letter and alteration
 * @param format - which signs
 * @returns "Bb", or "B♭"
 * @example formatPitchClass({ letter: "B", alteration: -1 }, { signs: "unicode" }) // "B♭"
 */
export function formatPitchClass(spelled: SpelledPitchClass, format: PitchFormat = {}): string {
  return spelled.letter + accidentalText(spelled.alteration, format.signs ?? "ascii");
}

/**
 * Prints a spelled pitch with its octave, scientific (C4 is middle C).
 * @param spelled - letter, alteration, octave
 * @param format - which signs
 * @returns "Bb4", or "B♭4"
 * @example formatPitch({ letter: "F", alteration: 1, octave: 3 }) // "F#3"
 */
export function formatPitch(spelled: SpelledPitch, format: PitchFormat = {}): string {
  return `${formatPitchClass(spelled, format)}${spelled.octave}`;
}

/**
 * Puts a spelling into the octave where it sounds a given pitch.
 * @param midi - sounding MIDI note number
 * @param spelled - a spelling of its pitch class
 * @returns the spelled pitch
 * @throws RangeError when the spelling sounds another pitch class
 * @example placeSpelling(59, { letter: "C", alteration: -1 }) // { letter: "C", alteration: -1, octave: 4 }
 */
export function placeSpelling(midi: SoundingMidi, spelled: SpelledPitchClass): SpelledPitch {
  const { letter, alteration } = spelled;
  const octave = (midi - LETTER_SEMITONES[letter] - alteration) / 12 - 1;
  if (!Number.isInteger(octave))
    throw new RangeError(`MIDI note ${midi} is not a ${formatPitchClass(spelled)}`);
  return { letter, alteration, octave };
}

/** A spelling, and whether it had to leave its own letter. */
export interface FoundSpelling {
  readonly spelled: SpelledPitchClass;
  /** True when the right letter would need three accidentals or more. */
  readonly isRespelled: boolean;
}

/**
 * Spells a pitch class on a given letter. Where that would need more than a double accidental, the
 * nearest letter that needs no more takes its place.
 * @param letterIndex - place of the letter above C; 7 is C again
 * @param sounding - the pitch class to be spelled
 * @returns the spelling
 * @source common practice, no single source: one letter for each degree of a chord
 */
export function spellOnLetter(letterIndex: Count, sounding: PitchClass): FoundSpelling {
  let spelled = onLetter(letterIndex, sounding);
  const direction = Math.sign(spelled.alteration);
  for (let step = 1; Math.abs(spelled.alteration) > 2; step++)
    spelled = onLetter(letterIndex + direction * step, sounding);
  return { spelled, isRespelled: spelled.letter !== onLetter(letterIndex, sounding).letter };
}

function onLetter(letterIndex: number, sounding: PitchClass): SpelledPitchClass {
  const letter: Letter = LETTERS[((letterIndex % 7) + 7) % 7] ?? "C";
  const above = pitchClass(sounding - LETTER_SEMITONES[letter]);
  return { letter, alteration: above > 6 ? above - 12 : above };
}
