import type { Semitones, SoundingMidi } from "../base/index.ts";
import type { Chord, SpelledPitch, SpelledPitchClass } from "../theory/index.ts";
import type { Transposition } from "../band/index.ts";
import type { DiatonicSteps } from "./staff-layout-types.ts";
import { letterIndex, midiOfSpelled, spellOnLetter } from "./staff-position.ts";

/** How a part is spelled: letter steps and semitones added to concert pitch. */
export interface Reading {
  readonly steps: DiatonicSteps;
  readonly semitones: Semitones;
}

/** Concert pitch as it stands. */
export const CONCERT: Reading = { steps: 0 as DiatonicSteps, semitones: 0 as Semitones };

/**
 * How a transposing player reads by the instrument's own interval.
 * @param transposition - what is added to written pitch to get sounding pitch
 * @returns letter steps and semitones from sounding to written
 */
export function strictReading(transposition: Transposition): Reading {
  // Taken from 0 so that no −0 comes out.
  const { diatonic, chromatic, octaveChange } = transposition;
  return {
    steps: (0 - diatonic - 7 * octaveChange) as DiatonicSteps,
    semitones: (0 - chromatic - 12 * octaveChange) as Semitones,
  };
}

/**
 * How a player's note stands in a concert score: as it sounds. Instruments that transpose by whole
 * octaves only (double bass) keep their written octave.
 * @param transposition - what is added to written pitch to get sounding pitch
 * @returns letter steps and semitones from sounding to the staff
 * @source W3C MusicXML 4.0, concert-score element; W3C MNX, part-transposition object
 */
export function concertReading(transposition: Transposition): Reading {
  return transposition.chromatic === 0 ? strictReading(transposition) : CONCERT;
}

/**
 * Moves a spelled pitch by an interval, letter and key together.
 * @param spelled - concert pitch
 * @param reading - letter steps and semitones to add
 * @returns the pitch at that interval, even where it takes a double accidental
 * @example E♭4 for an alto sax (steps 5, semitones 9) // C5
 */
export function moveSpelled(spelled: SpelledPitch, reading: Reading): SpelledPitch {
  const index = (letterIndex(spelled) + reading.steps) as DiatonicSteps;
  return spellOnLetter(index, (midiOfSpelled(spelled) + reading.semitones) as SoundingMidi);
}

/**
 * The same key on a letter that takes no double accidental: F𝄪 becomes G, B𝄫 becomes A, C𝄫 B♭.
 * @param spelled - any spelling
 * @returns the spelling given, or the nearest letter with at most one sharp or flat
 * @source common practice, no single source
 */
export function withoutDoubles(spelled: SpelledPitch): SpelledPitch {
  const towards = Math.sign(spelled.alteration);
  let friendly = spelled;
  while (Math.abs(friendly.alteration) > 1) {
    const next = (letterIndex(friendly) + towards) as DiatonicSteps;
    friendly = spellOnLetter(next, midiOfSpelled(spelled));
  }
  return friendly;
}

/** A sharp or flat that falls on a white key: E♯, B♯, C♭, F♭. */
function isWhiteKeyAccidental({ letter, alteration }: SpelledPitchClass): boolean {
  return alteration === 1 ? "EB".includes(letter) : alteration === -1 && "CF".includes(letter);
}

/**
 * The plain name of a white key: E♯ becomes F, C♭ becomes B.
 * @param spelled - any spelling
 * @returns the spelling given, or the natural letter that sounds the same
 */
export function asWhiteKey(spelled: SpelledPitch): SpelledPitch {
  if (!isWhiteKeyAccidental(spelled)) return spelled;
  const next = (letterIndex(spelled) + spelled.alteration) as DiatonicSteps;
  return spellOnLetter(next, midiOfSpelled(spelled));
}

/** How badly a pitch reads: doubles worst, then the sharps and flats that fall on white keys. */
function reluctance(spelled: SpelledPitchClass): number {
  if (Math.abs(spelled.alteration) > 1) return 3;
  return isWhiteKeyAccidental(spelled) ? 1 : 0;
}

function chordReluctance(chord: Chord, reading: Reading): number {
  return chord.tones
    .filter((tone) => tone.kind === "stated" || tone.kind === "implied")
    .map((tone) => reluctance(moveSpelled({ ...tone.spelled, octave: 4 }, reading)))
    .reduce((sum, value) => sum + value, 0);
}

/**
 * How a transposing player reads a chord: up the instrument's interval, and the whole chord
 * enharmonically where that reads better (concert B7 is A♭7 for an alto sax, not G♯7 with its B♯).
 * Root, symbol and notes move together, so they always agree.
 * @param chord - concert chord
 * @param transposition - what is added to written pitch to get sounding pitch
 * @returns letter steps and semitones from concert to written
 * @source W3C MusicXML 4.0, transpose element (interval); enharmonic choice: common practice, no
 * single source
 */
export function readingOf(chord: Chord, transposition: Transposition): Reading {
  const strict = strictReading(transposition);
  if (transposition.chromatic === 0) return strict;
  return [1, -1]
    .map((change): Reading => ({ ...strict, steps: (strict.steps + change) as DiatonicSteps }))
    .reduce(
      (best, next) => (chordReluctance(chord, next) < chordReluctance(chord, best) ? next : best),
      strict,
    );
}
