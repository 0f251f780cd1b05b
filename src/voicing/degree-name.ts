import { quantity, type SoundingMidi } from "../base/index.ts";
import type { AboveRoot, Chord } from "../theory/index.ts";
import { roleWord } from "./words.ts";

/**
 * A tone of a chord in words, without "the".
 * @param tone - semitones above the root, 0 to 11
 * @param chord - the chord
 * @returns "third", "♭9"
 */
export function degreeName(tone: AboveRoot, chord: Chord): string {
  const midi = quantity<SoundingMidi>(60 + ((chord.rootPitchClass + tone) % 12));
  return roleWord(midi, chord).replace(/^the /, "");
}
