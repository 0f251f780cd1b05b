import { quantity, type SoundingMidi, type WrittenMidi } from "../base/index.ts";

const STEPS: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

/**
 * MIDI note number of a pitch name, for the tables of this folder, which read better in names.
 * What users type is read in the theory folder.
 * @param name - letter, then any of # or b, then the octave: "F#3", "Bb4", "A0"
 * @returns the written MIDI note number; the tables name written pitches, as handbooks do
 * @throws RangeError when the name has another form
 * @source scientific pitch notation, C4 = 60
 * @example noteNumber("F#3") // 54
 */
export function noteNumber(name: string): WrittenMidi {
  const [, letter = "", accidental = "", octave = ""] = /^([A-G])(#|b)?(\d)$/.exec(name) ?? [];
  const step = STEPS[letter];
  if (step === undefined)
    throw new RangeError(`pitch name must look like F#3 or Bb4, got "${name}"`);
  const shift = accidental === "#" ? 1 : accidental === "b" ? -1 : 0;
  return quantity(12 * (Number(octave) + 1) + step + shift);
}

const NAMES = ["C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"] as const;

/**
 * A pitch in words, for sentences about ranges, where no key says how to spell it.
 * @param midi - sounding MIDI note number
 * @returns its usual name with the octave
 * @example pitchName(soundingMidi(58)) // "Bb3"
 */
export function pitchName(midi: SoundingMidi): string {
  return `${NAMES[((midi % 12) + 12) % 12] ?? ""}${Math.floor(midi / 12) - 1}`;
}
