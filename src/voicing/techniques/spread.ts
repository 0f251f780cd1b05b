import { pitchClass, type SoundingMidi } from "../../base/index.ts";
import type { AboveRoot, Chord } from "../../theory/index.ts";
import {
  aboveRoot,
  basicTone,
  categoryOf,
  choicesFor,
  printedColours,
  type TechniqueOptions,
} from "./categories.ts";
import { lowIntervalLimits } from "../low-interval-table.ts";

/** Spread voicings have four or five parts. */
export type SpreadParts = 4 | 5;

/** What may stand in each part above the root, low to high. */
type Slots = readonly (readonly AboveRoot[])[];

const octave = 12;

const spanOf = (stack: readonly SoundingMidi[]): number => (stack.at(-1) ?? 0) - (stack[0] ?? 0);

function guideTones(chord: Chord, options: TechniqueOptions): readonly AboveRoot[] {
  const guides = [...choicesFor(chord, "third", options), ...choicesFor(chord, "seventh", options)];
  return guides.length > 1 ? guides : [...guides, ...choicesFor(chord, "fifth", options)];
}

/** The fifth and every ticked tension. */
function upperTones(chord: Chord, options: TechniqueOptions): readonly AboveRoot[] {
  const fifths = choicesFor(chord, "fifth", options);
  const isTension = (tone: AboveRoot): boolean =>
    categoryOf(chord, tone) !== "fifth" &&
    tone !== basicTone(chord, "root") &&
    tone !== basicTone(chord, "third") &&
    tone !== basicTone(chord, "seventh");
  return [...fifths, ...options.ticked.filter(isTension)];
}

function slotsFor(chord: Chord, parts: SpreadParts, options: TechniqueOptions): Slots {
  const guides = guideTones(chord, options);
  const inner = [...new Set([...guides, ...choicesFor(chord, "fifth", options)])];
  const upper = upperTones(chord, options);
  return parts === 4 ? [guides, inner, upper] : [guides, inner, upper, upper];
}

/** Under a given lead the top part is the lead, whatever tone it is; the rest makes room for it. */
function slotsUnder(
  chord: Chord,
  lead: AboveRoot,
  parts: SpreadParts,
  options: TechniqueOptions,
): Slots {
  const withoutTop = slotsFor(chord, parts, options).slice(0, -1);
  const place = categoryOf(chord, lead);
  const fillsGuide = place === "third" || place === "seventh";
  const clears = (tone: AboveRoot): boolean =>
    tone !== lead && !(fillsGuide && categoryOf(chord, tone) === place);
  return [...withoutTop.map((slot) => slot.filter(clears)), [lead]];
}

/** Puts each part within an octave above the one below it; no tone repeats but the root as lead. */
function stacksFrom(
  chord: Chord,
  bottom: SoundingMidi,
  slots: Slots,
): readonly (readonly SoundingMidi[])[] {
  let stacks: readonly (readonly SoundingMidi[])[] = [[bottom]];
  for (const slot of slots)
    stacks = stacks.flatMap((stack) =>
      slot
        .filter((tone) => !stack.slice(1).some((pitch) => aboveRoot(chord, pitch) === tone))
        .map((tone) => {
          const below = stack.at(-1) ?? bottom;
          const up = pitchClass(tone + chord.rootPitchClass - below);
          return [...stack, (below + (up === 0 ? octave : up)) as SoundingMidi];
        }),
    );
  return stacks;
}

/**
 * Third and seventh both sound, the lead being counted; no semitone on top; wider than an octave.
 */
function isWhole(chord: Chord, stack: readonly SoundingMidi[], options: TechniqueOptions): boolean {
  const places = new Set(stack.map((pitch) => categoryOf(chord, aboveRoot(chord, pitch))));
  const needed = (["third", "seventh"] as const).filter(
    (place) => choicesFor(chord, place, options).length > 0,
  );
  const topGap = (stack.at(-1) ?? 0) - (stack.at(-2) ?? 0);
  const isOpen = spanOf(stack) > octave;
  return isOpen && topGap >= 2 && needed.every((place) => places.has(place));
}

/** Pairs of neighbouring gaps in which the lower gap is the narrower one. */
function bottomHeaviness(stack: readonly SoundingMidi[]): number {
  const gaps = stack.slice(1).map((pitch, index) => pitch - (stack[index] ?? 0));
  return gaps.slice(1).filter((gap, index) => gap > (gaps[index] ?? 0)).length;
}

function sortedBy(
  stacks: readonly (readonly SoundingMidi[])[],
  ...keys: readonly ((stack: readonly SoundingMidi[]) => number)[]
): readonly (readonly SoundingMidi[])[] {
  return [...stacks].sort((a, b) => {
    for (const key of keys) if (key(a) !== key(b)) return key(a) - key(b);
    return 0;
  });
}

/** Neighbours below their low-interval limit. */
function muddyPairs(stack: readonly SoundingMidi[]): number {
  return stack.filter((pitch, index) => {
    const gap = (stack[index + 1] ?? pitch) - pitch;
    return pitch < (lowIntervalLimits.limits[gap] ?? 0);
  }).length;
}

/** 0 where both tones right above the root are third and seventh. */
function guidesAboveRoot(chord: Chord, stack: readonly SoundingMidi[]): number {
  const places = stack.slice(1, 3).map((pitch) => categoryOf(chord, aboveRoot(chord, pitch)));
  return places.filter((place) => place !== "third" && place !== "seventh").length;
}

/**
 * Spread voicings over a given root: root; third or seventh; another of third, fifth, seventh;
 * then the fifth or tensions. Neighbours lie at most an octave apart.
 * @param chord - the chord as read
 * @param bottom - pitch of the root, sounding
 * @param parts - four or five
 * @param options - ticked tones
 * @returns every such voicing wider than an octave, low to high: those within the low-interval limits first, then
 *   those with guide tones right above the root, then the narrower ones; empty when `bottom` is
 *   not the root or tones are missing
 * @source G. Lindsay, Jazz Arranging Techniques (2005), as carried by the elm-music-theory library
 */
export function spreadsFromBass(
  chord: Chord,
  bottom: SoundingMidi,
  parts: SpreadParts,
  options: TechniqueOptions,
): readonly (readonly SoundingMidi[])[] {
  if (aboveRoot(chord, bottom) !== 0) return [];
  const stacks = stacksFrom(chord, bottom, slotsFor(chord, parts, options));
  const whole = stacks.filter((stack) => isWhole(chord, stack, options));
  const guides = (stack: readonly SoundingMidi[]): number => guidesAboveRoot(chord, stack);
  return sortedBy(whole, muddyPairs, guides, spanOf, bottomHeaviness);
}

/** Tensions under the lead that the symbol does not print: plain tones are tried first. */
function addedColours(chord: Chord, stack: readonly SoundingMidi[]): number {
  const printed = printedColours(chord);
  return stack.slice(0, -1).filter((pitch) => {
    const tone = aboveRoot(chord, pitch);
    return basicTone(chord, categoryOf(chord, tone)) !== tone && !printed.includes(tone);
  }).length;
}

/** How far the bottom lies outside the octave where baritone and bass trombone carry a root. */
function bottomOutOfPlace(stack: readonly SoundingMidi[]): number {
  const bottom = stack[0] ?? 0;
  return Math.max(0, 40 - bottom, bottom - 51);
}

/**
 * Spread voicings under a given lead: the rule of `spreadsFromBass` with the lead on top. A lead
 * that is itself root, third or seventh is allowed; the tones below then fill what it leaves.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param parts - four or five
 * @param options - ticked tones
 * @returns every such voicing wider than an octave, low to high: those within the low-interval
 *   limits first, then root between E2 and E♭3, then plain tones before added tensions, then wide
 *   gaps low, then guide tones right above the root; empty when there is none
 * @source G. Lindsay, Jazz Arranging Techniques (2005); root, third or seventh on top: common
 *   practice, no single source
 */
export function spreadsFromLead(
  chord: Chord,
  lead: SoundingMidi,
  parts: SpreadParts,
  options: TechniqueOptions,
): readonly (readonly SoundingMidi[])[] {
  const slots = slotsUnder(chord, aboveRoot(chord, lead), parts, options);
  const firstRoot = pitchClass(chord.rootPitchClass);
  const bottoms: SoundingMidi[] = [];
  for (let pitch = firstRoot as number; pitch < lead - octave; pitch += octave)
    bottoms.push(pitch as SoundingMidi);
  const stacks = bottoms
    .flatMap((bottom) => stacksFrom(chord, bottom, slots))
    .filter((stack) => stack.at(-1) === lead && isWhole(chord, stack, options));
  const guides = (stack: readonly SoundingMidi[]): number => guidesAboveRoot(chord, stack);
  const added = (stack: readonly SoundingMidi[]): number => addedColours(chord, stack);
  return sortedBy(stacks, muddyPairs, bottomOutOfPlace, added, bottomHeaviness, guides);
}
