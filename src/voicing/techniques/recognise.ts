import { pitchClass, type SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import { stackOf } from "../stack.ts";
import type { TechniqueId, Voicing } from "../voicing-types.ts";
import { aboveRoot, basicTone, categoryOf } from "./categories.ts";
import { lowToHigh } from "./close.ts";
import { isCluster } from "./cluster.ts";
import { dropVoices } from "./drop.ts";
import { isFifthsPair } from "./fifths-pair.ts";
import { isQuartal } from "./quartal.ts";
import { isTuttiGuideTones, isTuttiOctaveCopy, isTuttiWide } from "./recognise-tutti.ts";
import { isSpread } from "./recognise-spread.ts";
import { categories, categoryRows } from "./substitution-table.ts";
import { isUpperStructure } from "./upper-structure.ts";

type Stack = readonly SoundingMidi[];

/** Whether a tone under the lead is one the table of substitutions knows. */
function isOfChord(chord: Chord, pitch: SoundingMidi): boolean {
  const tone = aboveRoot(chord, pitch);
  return (
    categoryRows[chord.family][categoryOf(chord, tone)].includes(tone) ||
    categories.some((category) => basicTone(chord, category) === tone)
  );
}

/** Four-way or three-way close by the published rule, no semitone under the lead. */
function isClose(chord: Chord, stack: Stack): boolean {
  if (stack.length !== 3 && stack.length !== 4) return false;
  const lead = stack.at(-1) ?? 0;
  const lowest = stack[0] ?? 0;
  const under = stack.at(-2) ?? 0;
  const places = new Set(stack.map((pitch) => categoryOf(chord, aboveRoot(chord, pitch))));
  return (
    lead - lowest < 12 &&
    lead - under > 1 &&
    places.size === stack.length &&
    stack.slice(0, -1).every((pitch) => isOfChord(chord, pitch))
  );
}

/** Whether the stack is a close voicing with these voices, counted from the top, dropped. */
function isDrop(chord: Chord, stack: Stack, dropped: readonly number[]): boolean {
  if (stack.length > 4) return false;
  const raised = stack.map((pitch, index) =>
    index < dropped.length ? ((pitch + 12) as SoundingMidi) : pitch,
  );
  const close = lowToHigh(raised);
  if (!isClose(chord, close) || close.length < Math.max(...dropped)) return false;
  return dropVoices(close, dropped).every((pitch, index) => pitch === stack[index]);
}

/** The stack without the lead's octave below, or undefined when that does not sound. */
function withoutDouble(stack: Stack): Stack | undefined {
  const double = (stack.at(-1) ?? 0) - 12;
  return stack.some((pitch) => pitch === double)
    ? stack.filter((pitch) => pitch !== double)
    : undefined;
}

function isDoubleLead(chord: Chord, stack: Stack): boolean {
  const close = withoutDouble(stack);
  return close !== undefined && isClose(chord, close);
}

function isDropTwoDoubleLead(chord: Chord, stack: Stack): boolean {
  const opened = withoutDouble(stack);
  return opened !== undefined && isDrop(chord, opened, [2]);
}

function isOctaves(stack: Stack): boolean {
  return stack.length > 1 && new Set(stack.map((pitch) => pitchClass(pitch))).size === 1;
}

type Recogniser = readonly [TechniqueId, (chord: Chord, stack: Stack) => boolean];

const onStacks: readonly Recogniser[] = [
  ["unison", (_, stack) => stack.length === 1],
  ["octaves", (_, stack) => isOctaves(stack)],
  ["close", isClose],
  ["drop-2", (chord, stack) => isDrop(chord, stack, [2])],
  ["drop-3", (chord, stack) => stack.length === 4 && isDrop(chord, stack, [3])],
  ["drop-2-4", (chord, stack) => stack.length === 4 && isDrop(chord, stack, [2, 4])],
  ["double-lead", isDoubleLead],
  ["drop-2-double-lead", isDropTwoDoubleLead],
  ["spread", isSpread],
  ["upper-structure", isUpperStructure],
  ["quartal", (_, stack) => isQuartal(stack)],
  ["fifths-pair", (_, stack) => isFifthsPair(stack)],
  ["cluster", (_, stack) => isCluster(stack)],
];

const onSections: readonly (readonly [
  TechniqueId,
  (chord: Chord, voicing: Voicing, lead: SoundingMidi) => boolean,
])[] = [
  ["tutti-octave-copy", (_, voicing, lead) => isTuttiOctaveCopy(voicing, lead)],
  ["tutti-guide-tones", isTuttiGuideTones],
  ["tutti-wide", (chord, voicing) => isTuttiWide(chord, voicing)],
];

/** The stack as the arranger hears it: a player an octave above the lead is beside it. */
function stackUnder(stack: Stack, lead: SoundingMidi): Stack {
  const above = lead + 12;
  return stack.includes(lead) && stack.at(-1) === above ? stack.slice(0, -1) : stack;
}

/**
 * Names the techniques a stack of distinct pitches fits.
 * @param stack - distinct pitches, low to high, lead on top
 * @param chord - the chord as read
 * @returns technique ids in the order of the technique table; empty when none fits
 */
export function techniquesOfStack(
  stack: readonly SoundingMidi[],
  chord: Chord,
): readonly TechniqueId[] {
  return onStacks.filter(([, fits]) => fits(chord, stack)).map(([id]) => id);
}

/**
 * Names the techniques a voicing fits, whoever found it: those of its stack, and the tuttis by how
 * the sections share it. A voicing may fit several.
 * @param voicing - who sounds what
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @returns technique ids in the order of the technique table; empty when none fits
 */
export function techniquesOf(
  voicing: Voicing,
  chord: Chord,
  lead: SoundingMidi,
): readonly TechniqueId[] {
  const stack = stackUnder(stackOf(voicing), lead);
  const tuttis = onSections.filter(([, fits]) => fits(chord, voicing, lead)).map(([id]) => id);
  return [...techniquesOfStack(stack, chord), ...tuttis];
}
