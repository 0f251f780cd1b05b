import { quantity } from "../../../base/index.ts";
import { LETTERS, fifthsOf, type Key, type SpelledPitch } from "../../../theory/index.ts";
import { melodyReach } from "../new-phrase.ts";

/** Order in which sharps join a key signature. Source: common practice. */
const sharps = "FCGDAEB";
const semitones = [0, 2, 4, 5, 7, 9, 11] as const;

/** Letter steps above C0; middle C is 28. */
export function stepsOf({ letter, octave }: SpelledPitch): number {
  return 7 * octave + LETTERS.indexOf(letter);
}

/** What the key signature does to a letter, semitones. */
export function signatureOf(key: Key, letter: string): number {
  const fifths = fifthsOf(key);
  const place = sharps.indexOf(letter);
  if (fifths >= 0) return place < fifths ? 1 : 0;
  return 6 - place < -fifths ? -1 : 0;
}

/**
 * The pitch of a line or space as the key has it.
 * @param steps - letter steps above C0
 * @param key - the key
 * @returns spelled pitch
 */
export function pitchAtSteps(steps: number, key: Key): SpelledPitch {
  const letter = LETTERS[((steps % 7) + 7) % 7] ?? "C";
  return { letter, alteration: signatureOf(key, letter), octave: Math.floor(steps / 7) };
}

/** Sounding pitch, MIDI; may lie outside what can be sounded. */
export function midiOf({ letter, alteration, octave }: SpelledPitch): number {
  return 12 * (octave + 1) + (semitones[LETTERS.indexOf(letter)] ?? 0) + alteration;
}

/** Whether a melody note may lie there. */
export function isInReach(pitch: SpelledPitch): boolean {
  const midi = quantity<typeof melodyReach.low>(midiOf(pitch));
  return midi >= melodyReach.low && midi <= melodyReach.high;
}

/**
 * The pitch of a letter that lies nearest to another pitch.
 * @param letter - the letter
 * @param near - the note before; middle of the staff when there is none
 * @param key - gives the alteration
 * @returns spelled pitch, at most a fourth away
 */
export function nearest(letter: string, near: SpelledPitch | undefined, key: Key): SpelledPitch {
  const from = near === undefined ? 34 : stepsOf(near);
  const index = LETTERS.indexOf(letter as SpelledPitch["letter"]);
  const octaves = [-1, 0, 1].map((by) => 7 * (Math.floor(from / 7) + by) + index);
  const best = octaves.reduce((one, other) =>
    Math.abs(other - from) < Math.abs(one - from) ? other : one,
  );
  return pitchAtSteps(best, key);
}

/**
 * Spells a key of the keyboard in the melody's key.
 * @param midi - sounding pitch
 * @param key - the key
 * @returns the key's own spelling; else a flat in flat keys, a sharp in others
 */
export function spelledInKey(midi: number, key: Key): SpelledPitch {
  const found = LETTERS.flatMap((letter) =>
    [-1, 0, 1].map((alteration): SpelledPitch => {
      const natural = semitones[LETTERS.indexOf(letter)] ?? 0;
      const octave = Math.floor((midi - natural - alteration) / 12) - 1;
      return { letter, alteration, octave };
    }),
  ).filter((pitch) => midiOf(pitch) === midi);
  const isFlat = fifthsOf(key) < 0;
  const price = ({ letter, alteration }: SpelledPitch): number => {
    if (alteration === signatureOf(key, letter)) return 0;
    if (alteration === 0) return 1;
    return alteration < 0 === isFlat ? 2 : 3;
  };
  const [first, ...others] = found;
  if (first === undefined) throw new RangeError(`no spelling for the pitch ${midi}`);
  return others.reduce((one, other) => (price(other) < price(one) ? other : one), first);
}
