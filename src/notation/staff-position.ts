import type { Count, SoundingMidi } from "../base/index.ts";
import type { Letter, SpelledPitch } from "../theory/index.ts";
import type { Clef } from "../band/index.ts";
import type { DiatonicSteps, StaffStep } from "./staff-layout-types.ts";

const LETTERS: readonly Letter[] = ["C", "D", "E", "F", "G", "A", "B"];
const NATURAL_SEMITONES: readonly number[] = [0, 2, 4, 5, 7, 9, 11];

/** Letter index of the bottom line: E4 in treble, G2 in bass clef. */
const BOTTOM_LINE: Readonly<Record<Clef, number>> = { treble: 30, bass: 18 };

/**
 * Position of a spelled pitch on the ladder of letters, accidentals apart.
 * @param spelled - the pitch
 * @returns letter steps above C0: 7 · octave + letter (C 0 … B 6)
 * @example letterIndex({ letter: "C", alteration: 0, octave: 4 }) // 28
 */
export function letterIndex(spelled: SpelledPitch): DiatonicSteps {
  return (spelled.octave * 7 + LETTERS.indexOf(spelled.letter)) as DiatonicSteps;
}

/**
 * Key on which a spelled pitch is played.
 * @param spelled - the pitch; the octave belongs to the letter, so C♭4 is 59
 * @returns MIDI note number, middle C = 60; not bounded
 */
export function midiOfSpelled(spelled: SpelledPitch): SoundingMidi {
  const natural = NATURAL_SEMITONES[LETTERS.indexOf(spelled.letter)] ?? 0;
  return (12 * (spelled.octave + 1) + natural + spelled.alteration) as SoundingMidi;
}

/**
 * Spells a key on a given letter.
 * @param index - letter steps above C0
 * @param midi - the key
 * @returns the pitch on that letter, with whatever alteration it takes
 */
export function spellOnLetter(index: DiatonicSteps, midi: SoundingMidi): SpelledPitch {
  const octave = Math.floor(index / 7);
  const letter = LETTERS[index - 7 * octave] ?? "C";
  const natural = { letter, alteration: 0, octave };
  return { ...natural, alteration: midi - midiOfSpelled(natural) };
}

/**
 * Where a pitch stands on a staff.
 * @param spelled - the pitch as it stands on that staff
 * @param clef - the staff's clef
 * @returns half-spaces above the bottom line; −2 is the first ledger line below
 * @example staffStep({ letter: "C", alteration: 0, octave: 4 }, "treble") // -2
 */
export function staffStep(spelled: SpelledPitch, clef: Clef): StaffStep {
  return (letterIndex(spelled) - BOTTOM_LINE[clef]) as StaffStep;
}

/**
 * Ledger lines a note head needs.
 * @param step - half-spaces above the bottom line
 * @returns how many lines, above or below
 * @example ledgerLines(-2) // 1
 */
export function ledgerLines(step: StaffStep): Count {
  if (step < 0) return Math.floor(-step / 2);
  return step > 8 ? Math.floor((step - 8) / 2) : 0;
}
