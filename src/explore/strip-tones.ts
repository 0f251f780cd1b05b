import { pitchClass, quantity, type SoundingMidi } from "../base/index.ts";
import { degreeOf, pitchName, tickedTones, type Chord, type ChordTone } from "../theory/index.ts";
import type { Inquiry, StripTone, ToneChoice } from "./inquiry.ts";

const kindWords: Readonly<Record<ChordTone["kind"], string>> = {
  stated: "in the symbol",
  implied: "comes with the symbol",
  available: "an available tension",
  avoid: "usually avoided against this chord",
};

/**
 * The twelve tones of the question strip.
 * @param inquiry - what the user asked
 * @param chord - its chord
 * @returns tones by semitones above the root, 0 to 11; empty where there is no chord
 */
export function stripTones(inquiry: Inquiry, chord: Chord): readonly StripTone[] {
  if (chord.family === "no-chord") return [];
  const preset = new Set<number>(tickedTones(chord, inquiry.colour));
  return Array.from({ length: 12 }, (_, semitones) => {
    const midi = quantity<SoundingMidi>(60 + pitchClass(chord.rootPitchClass + semitones));
    const tone = chord.tones.find((each) => each.aboveRoot === semitones);
    const choice = inquiry.toneChoices[semitones] ?? (preset.has(semitones) ? "on" : "off");
    return {
      aboveRoot: semitones,
      name: pitchName(midi, chord).replace(/-?\d+$/, ""),
      degree: degreeOf(midi, chord),
      choice,
      remark: tone ? kindWords[tone.kind] : "foreign to this chord",
    };
  });
}

/**
 * Tones with one of the given choices.
 * @param strip - the twelve tones
 * @param choices - which states count
 * @returns semitones above the root, ascending
 */
export function tonesWith(
  strip: readonly StripTone[],
  ...choices: readonly ToneChoice[]
): readonly number[] {
  return strip.filter((tone) => choices.includes(tone.choice)).map((tone) => tone.aboveRoot);
}
