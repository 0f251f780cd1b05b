import type { Count, SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import { aboveRoot, type TechniqueOptions } from "./categories.ts";

const perfectFourth = 5;
const tritone = 6;

/** Steps down from a pitch, nearest to the rule first, to a ticked tone; undefined if none is. */
function stepDown(
  chord: Chord,
  from: SoundingMidi,
  steps: readonly number[],
  options: TechniqueOptions,
): SoundingMidi | undefined {
  const landing = steps.map((step) => (from - step) as SoundingMidi);
  return landing.find((pitch) => options.ticked.includes(aboveRoot(chord, pitch)));
}

const gapsOf = (stack: readonly SoundingMidi[]): readonly number[] =>
  stack.slice(1).map((pitch, index) => pitch - (stack[index] ?? 0));

function isStackOfFourths(stack: readonly SoundingMidi[]): boolean {
  const gaps = gapsOf(stack);
  const augmented = gaps.filter((gap) => gap === tritone).length;
  return augmented <= 1 && gaps.every((gap) => gap === perfectFourth || gap === tritone);
}

/**
 * Tells whether a stack is made of fourths, one of them augmented at most, with or without a third
 * on top.
 * @param stack - distinct pitches, low to high
 * @returns true for three fourth-spaced notes or more, or four or more with a third on top
 * @source common practice, no single source
 */
export function isQuartal(stack: readonly SoundingMidi[]): boolean {
  if (stack.length < 3) return false;
  if (isStackOfFourths(stack)) return true;
  const topGap = gapsOf(stack).at(-1);
  const hasThirdOnTop = topGap === 3 || topGap === 4;
  return stack.length > 3 && hasThirdOnTop && isStackOfFourths(stack.slice(0, -1));
}

function fourthsBelow(
  chord: Chord,
  top: SoundingMidi,
  voices: Count,
  options: TechniqueOptions,
): readonly SoundingMidi[] | undefined {
  const stack: SoundingMidi[] = [top];
  while (stack.length < voices) {
    const next = stepDown(chord, stack[0] ?? top, [perfectFourth, tritone], options);
    if (next === undefined || next < 0) return undefined;
    stack.unshift(next);
  }
  return isStackOfFourths(stack) ? stack : undefined;
}

/**
 * Quartal voicing: a stack of fourths under the lead. A fourth is perfect where a ticked tone
 * lies there, else augmented, once at most, as in stacking within a scale.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param voices - how many notes, three or more
 * @param options - ticked tones
 * @returns pitches low to high; undefined when a fourth leads to no ticked tone
 * @throws RangeError for fewer than three voices
 * @source common practice, no single source
 */
export function quartalVoicing(
  chord: Chord,
  lead: SoundingMidi,
  voices: Count,
  options: TechniqueOptions,
): readonly SoundingMidi[] | undefined {
  if (voices < 3) throw new RangeError(`a quartal voicing has three voices or more, got ${voices}`);
  return fourthsBelow(chord, lead, voices, options);
}

/**
 * Quartal voicing with a third on top: fourths, then a third under the lead.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param voices - how many notes, four or more; five is usual
 * @param options - ticked tones
 * @returns pitches low to high; undefined when a step leads to no ticked tone
 * @throws RangeError for fewer than four voices
 * @source published as P4 P4 P4 M3; on other degrees of a scale the steps are those of the scale
 */
export function quartalWithThirdOnTop(
  chord: Chord,
  lead: SoundingMidi,
  voices: Count,
  options: TechniqueOptions,
): readonly SoundingMidi[] | undefined {
  if (voices < 4)
    throw new RangeError(`quartal with a third on top has four voices or more, got ${voices}`);
  const second = stepDown(chord, lead, [4, 3], options);
  if (second === undefined) return undefined;
  const below = fourthsBelow(chord, second, voices - 1, options);
  return below && [...below, lead];
}
