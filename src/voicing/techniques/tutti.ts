import { pitchClass, soundingMidi, type Count, type SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import { aboveRoot, basicTone, categoryOf, type TechniqueOptions } from "./categories.ts";
import { closeVoicing, lowToHigh } from "./close.ts";
import { dropVoices } from "./drop.ts";
import { sizedFor } from "./section-size.ts";
import { guideTonesBelow, upperStructures } from "./upper-structure.ts";

/** Sections of horns. */
export type HornSection = "trumpets" | "trombones" | "saxes";

/** How many play in each section. */
export type SectionSizes = Readonly<Record<HornSection, Count>>;

/** One pitch a player, low to high, repeated where players double; empty for a silent section. */
export type SectionPitches = Readonly<Record<HornSection, readonly SoundingMidi[]>>;

/** Below this pitch guide tones are doubled in unison, not an octave lower. */
const lowestGuideTone = 48;

const octaveDown = (pitch: SoundingMidi): SoundingMidi => soundingMidi(pitch - 12);

function closeFor(
  chord: Chord,
  lead: SoundingMidi,
  players: Count,
  options: TechniqueOptions,
): readonly SoundingMidi[] {
  const close = closeVoicing(chord, lead, options);
  return close && players > 0 ? sizedFor(chord, close, players) : [];
}

/**
 * Tutti, octave copy: trumpets close under the lead, trombones the same an octave lower, saxes
 * doubling them with the lead alto an octave under the lead.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param sizes - players in each section
 * @param options - ticked tones
 * @returns pitches of each section; undefined when the chord gives no close voicing
 * @source C. Israels, Exploring Jazz Arranging, lesson 19; saxes: common practice
 */
export function tuttiOctaveCopy(
  chord: Chord,
  lead: SoundingMidi,
  sizes: SectionSizes,
  options: TechniqueOptions,
): SectionPitches | undefined {
  if (!closeVoicing(chord, lead, options)) return undefined;
  const below = octaveDown(lead);
  return {
    trumpets: closeFor(chord, lead, sizes.trumpets, options),
    trombones: closeFor(chord, lead, sizes.trombones, options).map(octaveDown),
    saxes: closeFor(chord, below, sizes.saxes, options),
  };
}

/** Both guide tones, then each an octave lower where that is not too low, else in unison. */
function guideTonesFor(guides: readonly SoundingMidi[], players: Count): readonly SoundingMidi[] {
  const highToLow = [...guides].reverse();
  const doubled = highToLow.map((pitch) =>
    pitch - 12 >= lowestGuideTone ? octaveDown(pitch) : pitch,
  );
  const cycle = [...highToLow, ...doubled];
  const parts = Array.from(
    { length: players },
    (_, index) => cycle[index % cycle.length] as SoundingMidi,
  );
  return lowToHigh(parts);
}

/**
 * Tutti, guide tones: trombones hold third and seventh, trumpets an upper-structure triad, a
 * fourth trumpet the lead an octave lower; saxes close from the lead an octave lower.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param sizes - players in each section
 * @param options - ticked tones
 * @returns pitches of each section; undefined without an upper structure under this lead
 * @source C. Israels, Exploring Jazz Arranging, lesson 19; saxes: common practice
 */
export function tuttiGuideTones(
  chord: Chord,
  lead: SoundingMidi,
  sizes: SectionSizes,
  options: TechniqueOptions,
): SectionPitches | undefined {
  const [upper] = upperStructures(chord, lead, options);
  const guides = upper && guideTonesBelow(chord, upper.pitches[2] ?? lead, options);
  if (!upper || !guides) return undefined;
  return {
    trumpets: sizes.trumpets > 0 ? sizedFor(chord, upper.pitches.slice(2), sizes.trumpets) : [],
    trombones: guideTonesFor(guides, sizes.trombones),
    saxes: closeFor(chord, octaveDown(lead), sizes.saxes, options),
  };
}

/** The root between C2 and B2, where baritone and bass trombone carry it. */
function lowRoot(chord: Chord): SoundingMidi {
  return soundingMidi(36 + pitchClass(chord.rootPitchClass));
}

/** Root, the fifth above it, and third and seventh right above those. */
function foundation(chord: Chord, options: TechniqueOptions) {
  const third = basicTone(chord, "third");
  const seventh = basicTone(chord, "seventh");
  if (third === undefined || seventh === undefined) return undefined;
  if (![third, seventh].every((tone) => options.ticked.includes(tone))) return undefined;
  const root = lowRoot(chord);
  const fifth = soundingMidi(root + (basicTone(chord, "fifth") ?? 7));
  const above = (tone: number): SoundingMidi => {
    const up = pitchClass(tone + chord.rootPitchClass - fifth);
    return soundingMidi(fifth + (up === 0 ? 12 : up));
  };
  return { root, fifth, guides: lowToHigh([above(third), above(seventh)]) };
}

function wideTrombones(
  base: { root: SoundingMidi; fifth: SoundingMidi; guides: readonly SoundingMidi[] },
  players: Count,
): readonly SoundingMidi[] {
  if (players <= 2) return base.guides.slice(2 - players);
  if (players === 3) return lowToHigh([base.fifth, ...base.guides]);
  const extra = Array.from({ length: players - 3 }, () => base.root);
  return lowToHigh([...extra, base.fifth, ...base.guides]);
}

/**
 * Tutti, wide: baritone on the root with the bass trombone, a trombone a fifth above, the first
 * two trombones on third and seventh, trumpets drop 2, the other saxes close under the lead an
 * octave lower.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param sizes - players in each section
 * @param options - ticked tones
 * @returns pitches of each section; undefined without third and seventh, or when the lead lies
 *   less than two octaves above the root
 * @source C. Israels, Exploring Jazz Arranging, lesson 19, for the foundation; spread above:
 *   common practice
 */
export function tuttiWide(
  chord: Chord,
  lead: SoundingMidi,
  sizes: SectionSizes,
  options: TechniqueOptions,
): SectionPitches | undefined {
  const base = foundation(chord, options);
  const close = closeVoicing(chord, lead, options);
  if (!base || !close || close.length < 4 || lead - base.root < 24) return undefined;
  const upperSaxes = closeFor(chord, octaveDown(lead), sizes.saxes - 1, options);
  return {
    trumpets: sizes.trumpets > 0 ? sizedFor(chord, dropVoices(close, [2]), sizes.trumpets) : [],
    trombones: wideTrombones(base, sizes.trombones),
    saxes: sizes.saxes > 0 ? lowToHigh([base.root, ...upperSaxes]) : [],
  };
}

/**
 * Tells whether a tone of the chord is one of its guide tones.
 * @param chord - the chord as read
 * @param pitch - any pitch
 * @returns true for the third and the seventh (or what stands for them in the symbol)
 */
export function isGuideTone(chord: Chord, pitch: SoundingMidi): boolean {
  const tone = aboveRoot(chord, pitch);
  const place = categoryOf(chord, tone);
  return (place === "third" || place === "seventh") && basicTone(chord, place) === tone;
}
