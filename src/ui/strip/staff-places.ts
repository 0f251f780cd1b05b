import type { StripTone } from "../../explore/index.ts";

const letters = "CDEFGAB";
const naturals = [0, 2, 4, 5, 7, 9, 11];

/**
 * Letter steps of a note name above C0; C4 is 28.
 * @param name - ASCII note name with octave, e.g. "Eb4"
 * @returns the number of letter steps, the accidental left aside
 */
export function letterSteps(name: string): number {
  const octave = Number(/-?\d+$/.exec(name)?.[0] ?? 4);
  return 7 * octave + letters.indexOf(name.charAt(0));
}

/**
 * The sounding pitch of a line or space, the letter taken as the chord spells it: the E line under
 * F13 is E flat. Natural where the chord has no such letter.
 * @param steps - letter steps above C0
 * @param strip - the twelve tones of the chord
 * @returns MIDI note number
 */
export function pitchOfSteps(steps: number, strip: readonly StripTone[]): number {
  const letter = letters.charAt(((steps % 7) + 7) % 7);
  const octave = Math.floor(steps / 7);
  const inChord = strip.filter((tone) => tone.choice !== "off" && tone.name.startsWith(letter));
  const name = inChord.find((tone) => tone.choice === "required") ?? inChord[0];
  const sharps = name === undefined ? 0 : alteration(name.name);
  return 12 * (octave + 1) + (naturals[letters.indexOf(letter)] ?? 0) + sharps;
}

/** Semitones an ASCII note name adds to its letter. */
export function alteration(name: string): number {
  return name.split("#").length - name.split("b").length;
}
