import { quantity, type SoundingMidi } from "../../base/index.ts";
import {
  formatPitchClass,
  pitchName,
  readChord,
  tickedTones,
  type Chord,
} from "../../theory/index.ts";

/** A chord or a melody note to pick, and in a few words what it is. */
export interface Suggestion {
  /** ASCII, as a user would type it. */
  readonly text: string;
  readonly meaning: string;
}

interface Step {
  /** Letters and semitones from the root up to the suggested root. */
  readonly letters: number;
  readonly semitones: number;
  readonly suffix: string;
  readonly meaning: string;
}

/** Chords that often follow. Source: common practice, no single source. */
const following: readonly Step[] = [
  { letters: 3, semitones: 5, suffix: "maj9", meaning: "down a fifth" },
  { letters: 3, semitones: 5, suffix: "m9", meaning: "down a fifth, minor" },
  { letters: 3, semitones: 5, suffix: "13", meaning: "down a fifth, on to the next" },
  { letters: -1, semitones: -1, suffix: "maj9", meaning: "down a semitone" },
  { letters: 1, semitones: 2, suffix: "m9", meaning: "up a step" },
];

/** Chords that often come before. Source: common practice, no single source. */
const preceding: readonly Step[] = [
  { letters: 4, semitones: 7, suffix: "13", meaning: "from a fifth above" },
  { letters: 4, semitones: 7, suffix: "m9", meaning: "from a fifth above, minor" },
  { letters: 4, semitones: 7, suffix: "7(b9,b13)", meaning: "from a fifth above, altered" },
  { letters: 1, semitones: 1, suffix: "13", meaning: "from a semitone above" },
  { letters: -1, semitones: -1, suffix: "dim7", meaning: "from a semitone below" },
];

const letters = "CDEFGAB";
const natural = [0, 2, 4, 5, 7, 9, 11];

/**
 * Neighbouring chords, spelled by the interval from the chord in view.
 * @param chord - the chord in view
 * @param isAfter - chords that follow, or chords that come before
 * @returns a few
 */
export function chordSuggestions(chord: Chord, isAfter: boolean): readonly Suggestion[] {
  return (isAfter ? following : preceding).map(({ suffix, meaning, ...step }) => ({
    text: rootAt(chord, step) + suffix,
    meaning,
  }));
}

/** Roots that nobody writes where there is a plain letter. */
const unwritten = ["E#", "B#", "Cb", "Fb"];

/** Double accidentals and roots that nobody writes are avoided by the neighbouring letter. */
function rootAt(chord: Chord, step: Pick<Step, "letters" | "semitones">): string {
  const { letter, alteration } = chord.root;
  const from = letters.indexOf(letter);
  const sounding = (natural[from] ?? 0) + alteration + step.semitones;
  const wanted = (from + step.letters + 14) % 7;
  for (const at of [wanted, (wanted + 1) % 7, (wanted + 6) % 7]) {
    const by = ((sounding - (natural[at] ?? 0) + 30) % 12) - 6;
    const text = (letters[at] ?? "C") + (by > 0 ? "#" : by < 0 ? "b" : "");
    if (Math.abs(by) <= 1 && !unwritten.includes(text)) return text;
  }
  return formatPitchClass(chord.root);
}

/** How far a suggested melody note lies from the one in view at most, semitones. */
const farthest = 5;

/**
 * Melody notes near the one in view that belong to the other chord.
 * @param chordText - the other chord as typed
 * @param lead - melody note in view, sounding MIDI note number
 * @returns up to five, the nearest first; empty while the chord cannot be read
 */
export function melodySuggestions(chordText: string, lead: number): readonly Suggestion[] {
  const read = readChord(chordText);
  if (!read.ok) return [];
  const chord = read.value;
  const ticked = new Set(tickedTones(chord, "tensions"));
  return Array.from({ length: 2 * farthest + 1 }, (_, index) => index - farthest)
    .filter((by) => ticked.has((((lead + by - chord.rootPitchClass) % 12) + 12) % 12))
    .sort((a, b) => Math.abs(a) - Math.abs(b) || a - b)
    .slice(0, 5)
    .map((by) => ({
      text: pitchName(quantity<SoundingMidi>(lead + by), chord),
      meaning: by === 0 ? "held" : `${by > 0 ? "up" : "down"} ${Math.abs(by)}`,
    }));
}
