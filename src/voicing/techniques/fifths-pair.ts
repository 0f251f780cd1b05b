import { pitchClass, type SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import { aboveRoot, type TechniqueOptions } from "./categories.ts";

/**
 * Fifths pair: two stacks of two perfect fifths; the upper one starts a semitone or a whole tone
 * above the top of the lower one.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param options - ticked tones
 * @returns the voicings whose tones are all ticked, low to high, those on the root first; empty
 *   when there is none
 * @source published fifths voicing for minor elevenths (semitone) and major sevenths with a sharp
 *   eleventh (whole tone)
 * @example fifthsPairs(readChord("Cm11").value, 77, { ticked: [0, 2, 3, 5, 7, 10] }) // [[48, 55, 62, 63, 70, 77]]
 */
export function fifthsPairs(
  chord: Chord,
  lead: SoundingMidi,
  options: TechniqueOptions,
): readonly (readonly SoundingMidi[])[] {
  const isTicked = (pitch: SoundingMidi): boolean =>
    pitch === lead || options.ticked.includes(aboveRoot(chord, pitch));
  const stacks = [1, 2].map((step) =>
    [28 + step, 21 + step, 14 + step, 14, 7, 0].map((down) => (lead - down) as SoundingMidi),
  );
  const onRoot = (stack: readonly SoundingMidi[]): number =>
    pitchClass((stack[0] ?? 0) - chord.rootPitchClass) === 0 ? 0 : 1;
  return stacks
    .filter((stack) => (stack[0] ?? -1) >= 0 && stack.every(isTicked))
    .sort((a, b) => onRoot(a) - onRoot(b));
}

/**
 * Tells whether a stack is a fifths pair.
 * @param stack - distinct pitches, low to high
 * @returns true for two pairs of perfect fifths a semitone or a whole tone apart
 * @source as for `fifthsPairs`
 */
export function isFifthsPair(stack: readonly SoundingMidi[]): boolean {
  const gaps = stack.slice(1).map((pitch, index) => pitch - (stack[index] ?? 0));
  const [a, b, step = 0, c, d] = gaps;
  const areFifths = [a, b, c, d].every((gap) => gap === 7);
  return stack.length === 6 && areFifths && (step === 1 || step === 2);
}
