import type { Semitones, SoundingMidi } from "../base/index.ts";
import { pitchName, type Chord } from "../theory/index.ts";
import { stackOf, type Voicing } from "../voicing/index.ts";
import type { Measured } from "./metric.ts";

/** Two neighbouring notes of a stack. */
export interface Gap {
  readonly lower: SoundingMidi;
  readonly upper: SoundingMidi;
  readonly semitones: Semitones;
}

/**
 * Gaps between neighbouring notes.
 * @param voicing - who sounds what
 * @returns gaps from the bottom up; empty for one pitch or none
 */
export function gapsOf(voicing: Voicing): readonly Gap[] {
  const stack = stackOf(voicing);
  return stack.slice(1).map((upper, index) => {
    const lower = stack[index] as SoundingMidi;
    return { lower, upper, semitones: (upper - lower) as Semitones };
  });
}

/**
 * Highest minus lowest pitch.
 * @param voicing - who sounds what
 * @returns semitones, an octave being 12; 0 for one pitch or none
 */
export function spanOf(voicing: Voicing): Semitones {
  const stack = stackOf(voicing);
  return ((stack.at(-1) ?? 0) - (stack[0] ?? 0)) as Semitones;
}

/**
 * A pitch as this chord spells it.
 * @param sounding - the pitch
 * @param chord - spells it
 * @returns "E♭4"
 */
export function pitchText(sounding: SoundingMidi, chord: Chord): string {
  return pitchName(sounding, chord, { signs: "unicode" });
}

/**
 * A measure that is not defined for a voicing.
 * @param why - one sentence
 * @returns value null, text "none"
 */
export function notDefined(why: string): Measured {
  return { value: null, text: "none", detail: why, notes: [], playerIds: [] };
}

/** Said of everything that needs two notes. */
export const needsTwoNotes = "One note or none sounds, so there is no distance to measure.";
