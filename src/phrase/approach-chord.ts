import { fail, pitchClass, type PitchClass, type Result } from "../base/index.ts";
import {
  LETTERS,
  diatonicSuffix,
  formatPitchClass,
  readChord,
  spelledPitchClass,
  spelledToMidi,
  spellPitch,
  type Chord,
  type Key,
  type Letter,
  type SpelledPitch,
  type SpelledPitchClass,
} from "../theory/index.ts";
import { dominantSuffixes } from "./approach-table.ts";
import type { ApproachTechnique } from "./harmony-types.ts";

/** A short note, where it goes, and what sounds there. */
export interface Approach {
  readonly from: SpelledPitch;
  readonly into: SpelledPitch;
  /** Chord of the note it goes into. */
  readonly target: Chord;
  readonly key: Key;
}

const stepsBetween = ({ from, into }: Approach): number =>
  spelledToMidi(from) - spelledToMidi(into);

/** A root moved as far as the melody moves, on the letter that move gives. */
function movedRoot(approach: Approach): SpelledPitchClass {
  const { from, into, target } = approach;
  const sounding = pitchClass(target.rootPitchClass + stepsBetween(approach));
  const letterSteps =
    LETTERS.indexOf(from.letter) - LETTERS.indexOf(into.letter) + 7 * (from.octave - into.octave);
  const letter =
    LETTERS[(((LETTERS.indexOf(target.root.letter) + letterSteps) % 7) + 7) % 7] ?? "C";
  return spelledAs(sounding, letter);
}

/** On the letter asked for with at most one accidental, else plainly. */
function spelledAs(sounding: PitchClass, letter: Letter): SpelledPitchClass {
  const natural = spelledPitchClass({ letter, alteration: 0 });
  const above = pitchClass(sounding - natural);
  const alteration = above > 6 ? above - 12 : above;
  return Math.abs(alteration) <= 1 ? { letter, alteration } : plainly(sounding);
}

function plainly(sounding: PitchClass): SpelledPitchClass {
  const { letter, alteration } = spellPitch((60 + sounding) as Parameters<typeof spellPitch>[0]);
  return { letter, alteration };
}

const suffixOf = (chord: Chord): string => {
  const withoutBass = chord.hasSlashBass ? (chord.symbol.split("/")[0] ?? "") : chord.symbol;
  return withoutBass.slice(formatPitchClass(chord.root).length);
};

function parallel(approach: Approach): Result<Chord> {
  if (approach.target.family === "no-chord") return noChordThere();
  return readChord(formatPitchClass(movedRoot(approach)) + suffixOf(approach.target));
}

function chromatic(approach: Approach): Result<Chord> {
  if (Math.abs(stepsBetween(approach)) === 1) return parallel(approach);
  return fail(
    "approach-not-semitone",
    "A chromatic approach needs a melody that moves by a semitone; choose another technique.",
  );
}

function diatonic(approach: Approach): Result<Chord> {
  if (approach.target.family === "no-chord") return noChordThere();
  const root = movedRoot(approach);
  const suffix = diatonicSuffix(approach.key, spelledPitchClass(root));
  if (suffix === undefined)
    return fail(
      "approach-not-diatonic",
      `${formatPitchClass(root, { signs: "unicode" })} is not in the key, so there is no diatonic chord on it; choose another technique.`,
    );
  return readChord(formatPitchClass(root) + suffix);
}

/** The one diminished seventh chord that holds the note, named where the target makes it plain. */
function diminished(approach: Approach): Result<Chord> {
  if (approach.target.family === "no-chord") return noChordThere();
  const holds = (root: PitchClass): boolean =>
    pitchClass(spelledToMidi(approach.from) - root) % 3 === 0;
  const moved = movedRoot(approach);
  const leading = plainly(pitchClass(approach.target.rootPitchClass + 11));
  const { letter, alteration } = approach.from;
  const root = [moved, leading].find((each) => holds(spelledPitchClass(each)));
  return readChord(`${formatPitchClass(root ?? { letter, alteration })}dim7`);
}

function dominant(approach: Approach): Result<Chord> {
  if (approach.target.family === "no-chord") return noChordThere();
  const { root } = approach.target;
  const fifthUp = LETTERS[(LETTERS.indexOf(root.letter) + 4) % 7] ?? "C";
  const sounding = pitchClass(approach.target.rootPitchClass + 7);
  const suffix = dominantSuffixes[pitchClass(spelledToMidi(approach.from) - sounding)];
  if (suffix === undefined || suffix === "")
    return fail(
      "approach-no-dominant",
      "The major seventh cannot sound over the dominant of the target; choose another technique.",
    );
  return readChord(formatPitchClass(spelledAs(sounding, fifthUp)) + suffix);
}

function noChordThere(): ReturnType<typeof fail> {
  return fail("approach-no-chord", "There is no chord to approach here.");
}

const techniques: Readonly<Record<ApproachTechnique, (approach: Approach) => Result<Chord>>> = {
  chromatic,
  diatonic,
  parallel,
  dominant,
  diminished,
};

/**
 * The chord under an approach note.
 * @param technique - chromatic and parallel: the target's chord moved as the melody moves (chromatic
 *   by a semitone only, and then every voice moves along); diatonic: the key's chord on that root;
 *   diminished: the diminished seventh chord that holds the note; dominant: the dominant of the
 *   target in the form that holds the note
 * @param approach - the note, the note it goes into, that note's chord, the key
 * @returns the chord, or the problem: `approach-not-semitone`, `approach-not-diatonic`,
 *   `approach-no-dominant`, `approach-no-chord`
 * @source T. Pease & K. Pullig, Modern Jazz Voicings (techniques); rules as in elm-music-theory
 *   (commit cbf09f1) after G. Lindsay
 */
export function approachChord(technique: ApproachTechnique, approach: Approach): Result<Chord> {
  return techniques[technique](approach);
}
