import { pitchClass, type SoundingMidi } from "../../base/index.ts";
import type { AboveRoot, Chord } from "../../theory/index.ts";
import { aboveRoot, basicTone, choicesFor, type TechniqueOptions } from "./categories.ts";
import { highestBelow, lowToHigh } from "./close.ts";
import { categories } from "./substitution-table.ts";

/** A complete triad over the guide tones of a chord. */
export interface UpperStructure {
  /** Root of the triad, semitones above the root of the chord. */
  readonly triadRoot: AboveRoot;
  readonly triadQuality: "major" | "minor";
  /** Lower guide tone, upper guide tone, then the triad; low to high. */
  readonly pitches: readonly SoundingMidi[];
}

const thirdOf = { major: 4, minor: 3 } as const;

/**
 * Tones of a triad over a chord.
 * @param root - root of the triad, semitones above the root of the chord
 * @param quality - major or minor
 * @returns root, third and fifth of the triad, semitones above the root of the chord, 0 to 11
 */
export function triadTones(
  root: AboveRoot,
  quality: UpperStructure["triadQuality"],
): readonly AboveRoot[] {
  return [0, thirdOf[quality], 7].map((step) => pitchClass(root + step));
}

/** Every ticked triad that holds the lead and at least one tone beyond the four basic ones. */
function triadsUnder(chord: Chord, lead: SoundingMidi, options: TechniqueOptions) {
  const leadTone = aboveRoot(chord, lead);
  const basics = categories.map((category) => basicTone(chord, category));
  const found: { root: AboveRoot; quality: UpperStructure["triadQuality"]; colours: number }[] = [];
  for (let root = 0; root < 12; root++)
    for (const quality of ["major", "minor"] as const) {
      const tones = triadTones(root, quality);
      const areTicked = tones.every((tone) => tone === leadTone || options.ticked.includes(tone));
      const colours = tones.filter((tone) => !basics.includes(tone)).length;
      if (areTicked && tones.includes(leadTone) && colours > 0)
        found.push({ root: root, quality, colours });
    }
  return found.sort((a, b) => b.colours - a.colours);
}

/**
 * Third and seventh of a chord below a pitch, as close to it as they go.
 * @param chord - the chord as read
 * @param above - pitch to stay below
 * @param options - ticked tones
 * @returns two pitches, low to high; undefined when the chord has no third (or fourth) and
 *   seventh (or sixth) ticked
 */
export function guideTonesBelow(
  chord: Chord,
  above: SoundingMidi,
  options: TechniqueOptions,
): readonly [SoundingMidi, SoundingMidi] | undefined {
  const third = choicesFor(chord, "third", options)[0];
  const seventh = choicesFor(chord, "seventh", options)[0];
  if (third === undefined || seventh === undefined) return undefined;
  const near = [third, seventh].map((tone) => ({ tone, pitch: highestBelow(chord, tone, above) }));
  const [first, second] = near.sort((a, b) => b.pitch - a.pitch);
  if (!first || !second) return undefined;
  return [highestBelow(chord, second.tone, first.pitch), first.pitch];
}

/**
 * Upper structures: third and seventh below, a complete major or minor triad above with the lead
 * on top, in whatever inversion the lead asks for.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param options - ticked tones
 * @returns one for every triad of ticked tones with at least one tension, most tensions first;
 *   empty when there is none
 * @source upper structure: common practice; published table of triads over a dominant, see
 *   reference works on jazz piano voicing (values checked in the tests)
 */
export function upperStructures(
  chord: Chord,
  lead: SoundingMidi,
  options: TechniqueOptions,
): readonly UpperStructure[] {
  const leadTone = aboveRoot(chord, lead);
  return triadsUnder(chord, lead, options).flatMap(({ root, quality }) => {
    const others = triadTones(root, quality).filter((tone) => tone !== leadTone);
    const triad = lowToHigh([lead, ...others.map((tone) => highestBelow(chord, tone, lead))]);
    const guides = guideTonesBelow(chord, triad[0] ?? lead, options);
    if (!guides) return [];
    return [{ triadRoot: root, triadQuality: quality, pitches: [...guides, ...triad] }];
  });
}

/**
 * The triad that three pitches form inside one octave, when it holds a tension of the chord.
 * @param chord - the chord as read
 * @param pitches - distinct pitches, low to high
 * @returns root and quality; undefined when they are not a major or minor triad or hold no tension
 */
export function triadIn(
  chord: Chord,
  pitches: readonly SoundingMidi[],
): Omit<UpperStructure, "pitches"> | undefined {
  const tones = pitches.map((pitch) => aboveRoot(chord, pitch));
  const basics = categories.map((category) => basicTone(chord, category));
  const isInOctave = (pitches.at(-1) ?? 0) - (pitches[0] ?? 0) < 12;
  if (tones.length !== 3 || !isInOctave || tones.every((tone) => basics.includes(tone)))
    return undefined;
  for (const triadRoot of tones)
    for (const triadQuality of ["major", "minor"] as const)
      if (triadTones(triadRoot, triadQuality).every((tone) => tones.includes(tone)))
        return { triadRoot, triadQuality };
  return undefined;
}

/**
 * Tells whether a stack is an upper structure: third and seventh at the bottom (a root below them
 * does not count), a triad with a tension above them.
 * @param chord - the chord as read
 * @param stack - distinct pitches, low to high
 * @returns true when it fits
 * @source as for `upperStructures`
 */
export function isUpperStructure(chord: Chord, stack: readonly SoundingMidi[]): boolean {
  const isOnRoot = stack.length === 6 && aboveRoot(chord, stack[0] ?? (0 as SoundingMidi)) === 0;
  const parts = isOnRoot ? stack.slice(1) : stack;
  if (parts.length !== 5) return false;
  const guides = parts.slice(0, 2).map((pitch) => aboveRoot(chord, pitch));
  const wanted = [basicTone(chord, "third"), basicTone(chord, "seventh")];
  const areGuides = wanted.every((tone) => tone !== undefined && guides.includes(tone));
  return areGuides && triadIn(chord, parts.slice(2)) !== undefined;
}
