import { pitchClass, type SoundingMidi } from "../base/index.ts";
import type { Chord, ChordTone, SpelledPitch } from "../theory/index.ts";
import type { DiatonicSteps } from "./staff-layout-types.ts";
import { letterIndex, spellOnLetter } from "./staff-position.ts";

/** Degrees of notes the chord does not hold, by semitones above the root, as players count them. */
const DEGREES: readonly string[] = Object.freeze("1 b9 9 #9 3 11 #11 5 b13 13 b7 7".split(" "));
/** Letter steps above the root's letter of those degrees. */
const LETTER_STEPS: readonly number[] = Object.freeze([0, 1, 1, 1, 2, 3, 3, 4, 5, 5, 6, 6]);
/** Letters used where there is no chord: C C♯ D E♭ E F F♯ G A♭ A B♭ B. */
const PLAIN_LETTERS: readonly number[] = Object.freeze([0, 0, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6]);

function toneAt(sounding: SoundingMidi, chord: Chord): ChordTone | undefined {
  const wanted = pitchClass(sounding);
  return chord.tones.find((tone) => tone.pitchClass === wanted);
}

/** Nearest pitch to the key that stands on a letter (0 = C … 6 = B). */
function onLetter(letter: number, sounding: SoundingMidi): SpelledPitch {
  const octave = Math.floor(sounding / 12) - 1;
  const choices = [octave - 1, octave, octave + 1].map((each) =>
    spellOnLetter((each * 7 + letter) as DiatonicSteps, sounding),
  );
  return choices.reduce((best, next) =>
    Math.abs(next.alteration) < Math.abs(best.alteration) ? next : best,
  );
}

/**
 * Spells a sounding pitch for the chord it is heard in.
 * @param sounding - the key
 * @param chord - the chord; its own tones keep their spelling, others are spelled as tensions
 * @returns the pitch, with a double accidental where the chord asks for one
 * @example the key 71 in A♭m // C♭5
 */
export function spellInChord(sounding: SoundingMidi, chord: Chord): SpelledPitch {
  const tone = toneAt(sounding, chord);
  if (tone) return onLetter(letterIndex({ ...tone.spelled, octave: 0 }), sounding);
  if (chord.family === "no-chord")
    return onLetter(PLAIN_LETTERS[pitchClass(sounding)] ?? 0, sounding);
  const aboveRoot = pitchClass(sounding - chord.rootPitchClass);
  const root = letterIndex({ ...chord.root, octave: 0 });
  return onLetter((root + (LETTER_STEPS[aboveRoot] ?? 0)) % 7, sounding);
}

/**
 * What a sounding pitch is in its chord.
 * @param sounding - the key
 * @param chord - the chord
 * @returns degree, ASCII: "1", "b7", "#11"; empty for no chord
 */
export function degreeInChord(sounding: SoundingMidi, chord: Chord): string {
  if (chord.family === "no-chord") return "";
  const tone = toneAt(sounding, chord);
  return tone?.degree ?? DEGREES[pitchClass(sounding - chord.rootPitchClass)] ?? "";
}
