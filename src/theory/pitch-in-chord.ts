import { pitchClass, type SoundingMidi } from "../base/index.ts";
import type { Chord, ChordTone } from "./chord-types.ts";
import { spellDegree } from "./degree.ts";
import { foreignDegree } from "./foreign-degree.ts";
import { PLAIN_SPELLINGS } from "./letter-table.ts";
import {
  formatPitch,
  placeSpelling,
  spelledPitchClass,
  type PitchFormat,
} from "./spelled-pitch.ts";
import type { SpelledPitch, SpelledPitchClass } from "./spelled-pitch-types.ts";

const toneOf = (midi: SoundingMidi, chord: Chord): ChordTone | undefined =>
  chord.tones.find((tone) => tone.pitchClass === pitchClass(midi));

/**
 * Spells a sounding pitch. A tone of the chord takes its spelling there; another note is spelled by
 * its degree, or plainly where that would need a double accidental.
 * @param midi - sounding MIDI note number
 * @param chord - the chord it sounds in, if any
 * @returns letter, alteration, octave
 */
export function spellPitch(midi: SoundingMidi, chord?: Chord): SpelledPitch {
  const plain = PLAIN_SPELLINGS[pitchClass(midi)] ?? { letter: "C", alteration: 0 };
  return placeSpelling(midi, chord === undefined ? plain : spellingIn(midi, chord, plain));
}

function spellingIn(midi: SoundingMidi, chord: Chord, plain: SpelledPitchClass): SpelledPitchClass {
  if (chord.family === "no-chord") return plain;
  const tone = toneOf(midi, chord);
  if (tone !== undefined && (tone.kind === "stated" || tone.kind === "implied"))
    return tone.spelled;
  const degree = tone?.degree ?? foreignDegree(aboveRootOf(midi, chord), chord.tones);
  const { spelled } = spellDegree(chord.root, degree);
  return Math.abs(spelled.alteration) > 1 ? plain : spelled;
}

const aboveRootOf = (midi: SoundingMidi, chord: Chord) =>
  pitchClass(midi - spelledPitchClass(chord.root));

/**
 * Name of a sounding pitch, spelled for its chord.
 * @param midi - sounding MIDI note number
 * @param chord - the chord it sounds in, if any
 * @param format - which signs; ASCII unless said otherwise
 * @returns "Eb4", or "E♭4"
 */
export function pitchName(midi: SoundingMidi, chord?: Chord, format: PitchFormat = {}): string {
  return formatPitch(spellPitch(midi, chord), format);
}

/**
 * Degree of a sounding pitch in a chord; displayDegree prints it for people.
 * @param midi - sounding MIDI note number
 * @param chord - the chord it sounds in
 * @returns ASCII degree label: "b7", "#11"; empty where there is no chord
 */
export function degreeOf(midi: SoundingMidi, chord: Chord): string {
  if (chord.family === "no-chord") return "";
  return toneOf(midi, chord)?.degree ?? foreignDegree(aboveRootOf(midi, chord), chord.tones);
}
