import { pitchClass, soundingMidi, type SoundingMidi } from "../../base/index.ts";
import type { AboveRoot, Chord } from "../../theory/index.ts";
import {
  aboveRoot,
  basicTone,
  categoryOf,
  choicesFor,
  printedColours,
  type TechniqueOptions,
} from "./categories.ts";
import { categories, categoryRows, type Category } from "./substitution-table.ts";

/**
 * The highest pitch of a tone strictly below another pitch.
 * @param chord - the chord the tone belongs to
 * @param tone - semitones above the root
 * @param above - the pitch to stay below
 * @returns 1 to 12 semitones below `above`
 * @throws RangeError when it would lie below MIDI 0
 */
export function highestBelow(chord: Chord, tone: AboveRoot, above: SoundingMidi): SoundingMidi {
  const down = pitchClass(above - chord.rootPitchClass - tone);
  return soundingMidi(above - (down === 0 ? 12 : down));
}

/**
 * Pitches low to high.
 * @param pitches - in any order
 * @returns the same pitches, lowest first
 */
export function lowToHigh(pitches: readonly SoundingMidi[]): readonly SoundingMidi[] {
  return [...pitches].sort((a, b) => a - b);
}

/**
 * A semitone under the lead, or the major seventh when the lead is the fourth of a major chord,
 * which is then heard as a suspended one.
 */
function clashesWith(chord: Chord, leadTone: AboveRoot, tone: AboveRoot): boolean {
  const isSuspended = leadTone === 5 && basicTone(chord, "third") === 4;
  return (tone + 1) % 12 === leadTone || (isSuspended && tone === 11);
}

/** Tones that may fill a place under this lead; a place that only clashes may borrow from its row. */
function choicesUnderLead(
  chord: Chord,
  category: Category,
  leadTone: AboveRoot,
  options: TechniqueOptions,
): readonly AboveRoot[] {
  const ticked = choicesFor(chord, category, options);
  const clashes = (tone: number): boolean => clashesWith(chord, leadTone, tone);
  if (ticked.length === 0 || ticked.some((tone) => !clashes(tone))) return ticked;
  const borrowed = categoryRows[chord.family][category].filter(
    (tone) => !clashes(tone) && tone !== leadTone,
  );
  return borrowed.length > 0 ? borrowed : ticked;
}

function everyCombination(
  lists: readonly (readonly AboveRoot[])[],
): readonly (readonly AboveRoot[])[] {
  let combinations: readonly (readonly AboveRoot[])[] = [[]];
  for (const list of lists)
    combinations = combinations.flatMap((done) => list.map((next) => [...done, next]));
  return combinations;
}

/** What speaks against a set of tones under a lead, most serious first; smaller is better. */
function faults(
  chord: Chord,
  lead: SoundingMidi,
  places: readonly Category[],
  tones: readonly AboveRoot[],
): readonly number[] {
  const leadTone = aboveRoot(chord, lead);
  const colours = printedColours(chord);
  const stack = lowToHigh([lead, ...tones.map((tone) => highestBelow(chord, tone, lead))]);
  const gaps = stack.slice(1).map((pitch, index) => pitch - (stack[index] ?? 0));
  const substituted = places.filter((place, index) => tones[index] !== basicTone(chord, place));
  const unprinted = tones.filter(
    (tone, index) =>
      tone !== basicTone(chord, places[index] ?? "root") &&
      basicTone(chord, places[index] ?? "root") !== undefined &&
      !colours.includes(tone),
  );
  return [
    tones.filter((tone) => clashesWith(chord, leadTone, tone)).length,
    colours.filter((tone) => tone !== leadTone && !tones.includes(tone)).length,
    gaps.filter((gap) => gap === 1).length,
    unprinted.length,
    substituted.reduce((sum, place) => sum + categories.indexOf(place), 0),
  ];
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}

/**
 * Four-way close: the lead with three notes below it inside one octave, one note for each place
 * of the chord (root, third, fifth, seventh) or its substitute; three-way close for triads.
 * Never a semitone under the lead when another choice exists: under the root of a major seventh
 * the sixth stands for the seventh. What the symbol prints goes before plain chord tones, and a
 * ticked tension replaces the tone that would make a semitone inside.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param options - ticked tones
 * @returns three or four pitches, low to high; undefined when the chord gives fewer than three
 * @source G. Lindsay, Jazz Arranging Techniques (2005), ch. 10; three-way: common practice
 * @example closeVoicing(readChord("C6").value, 76, { ticked: [0, 4, 7, 9] }) // [67, 69, 72, 76]
 */
export function closeVoicing(
  chord: Chord,
  lead: SoundingMidi,
  options: TechniqueOptions,
): readonly SoundingMidi[] | undefined {
  const leadTone = aboveRoot(chord, lead);
  const leadPlace = categoryOf(chord, leadTone);
  const open = categories.filter((category) => category !== leadPlace);
  const choices = open.map((category) => choicesUnderLead(chord, category, leadTone, options));
  const places = open.filter((_, index) => (choices[index]?.length ?? 0) > 0);
  if (places.length < 2) return undefined;
  const combinations = everyCombination(choices.filter((list) => list.length > 0));
  let best = combinations[0] ?? [];
  for (const tones of combinations)
    if (isLess(faults(chord, lead, places, tones), faults(chord, lead, places, best))) best = tones;
  return lowToHigh([lead, ...best.map((tone) => highestBelow(chord, tone, lead))]);
}
