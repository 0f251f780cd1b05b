import { pitchClass, type SoundingMidi } from "../../base/index.ts";
import type { AboveRoot, Chord, ToneRole } from "../../theory/index.ts";
import { categories, categoryRows, type Category } from "./substitution-table.ts";

/** Which tones a construction may use. */
export interface TechniqueOptions {
  /** Semitones above the root (0 to 11) that may sound. */
  readonly ticked: readonly AboveRoot[];
}

/**
 * How far a pitch lies above the chord's root, octaves taken off.
 * @param chord - the chord as read
 * @param sounding - any pitch
 * @returns 0 to 11
 */
export function aboveRoot(chord: Chord, sounding: SoundingMidi): AboveRoot {
  return pitchClass(sounding - chord.rootPitchClass);
}

const placeOfRole: Readonly<Partial<Record<ToneRole, Category>>> = {
  root: "root",
  third: "third",
  "suspended-second": "third",
  "suspended-fourth": "third",
  fifth: "fifth",
  sixth: "seventh",
  seventh: "seventh",
};

/** The tone each place is named after in this chord: 6 in a C6, ♭5 in a half-diminished chord. */
function namingTones(chord: Chord): ReadonlyMap<Category, AboveRoot> {
  const basics = new Map<Category, AboveRoot>();
  const own = chord.tones.filter(({ kind }) => kind === "stated" || kind === "implied");
  for (const { role, aboveRoot } of own) {
    const place = placeOfRole[role];
    if (place && !basics.has(place)) basics.set(place, aboveRoot);
  }
  // A major eleventh chord has its eleventh where others have the third.
  const third = own.find(({ aboveRoot }) => categoryRows[chord.family].third.includes(aboveRoot));
  if (third && !basics.has("third")) basics.set("third", third.aboveRoot);
  return basics;
}

/** Places of tones that no row names, by semitones above the root. */
const placeOfForeign: readonly Category[] = [
  "root",
  "root",
  "root",
  "root",
  "third",
  "fifth",
  "fifth",
  "fifth",
  "fifth",
  "seventh",
  "seventh",
  "seventh",
];

function placeOf(
  tone: AboveRoot,
  chord: Chord,
  basics: ReadonlyMap<Category, AboveRoot>,
): Category {
  const row = categoryRows[chord.family];
  return (
    categories.find((category) => basics.get(category) === tone) ??
    categories.find((category) => row[category].includes(tone)) ??
    categories.find((category) => basics.get(category) === tone - 1) ??
    placeOfForeign[tone] ??
    "root"
  );
}

/** What is asked of a chord again and again. */
interface Places {
  readonly basics: ReadonlyMap<Category, AboveRoot>;
  /** Place of each of the twelve tones. */
  readonly ofTone: readonly Category[];
}

/** A chord never changes, so its places are worked out once; labelling an atlas asks thousands. */
const known = new WeakMap<Chord, Places>();

function placesOf(chord: Chord): Places {
  const found = known.get(chord);
  if (found) return found;
  const basics = namingTones(chord);
  const ofTone = placeOfForeign.map((_, tone) => placeOf(tone, chord, basics));
  const places = { basics, ofTone };
  known.set(chord, places);
  return places;
}

/**
 * The tone a place of the chord is named after.
 * @param chord - the chord as read
 * @param category - root, third (or what suspends it), fifth, seventh (or sixth)
 * @returns semitones above the root, or undefined where the chord has none (a triad's seventh)
 */
export function basicTone(chord: Chord, category: Category): AboveRoot | undefined {
  return placesOf(chord).basics.get(category);
}

/**
 * The place a tone fills in four-way writing: the ninth stands for the root, the thirteenth for
 * the fifth. A melody note foreign to the chord takes the place of the tone a semitone below it,
 * which could not sound under it.
 * @param chord - the chord as read
 * @param tone - semitones above the root, 0 to 11
 * @returns the place
 * @source G. Lindsay, Jazz Arranging Techniques (2005), ch. 10, for the rows of the table
 */
export function categoryOf(chord: Chord, tone: AboveRoot): Category {
  return placesOf(chord).ofTone[tone] ?? "root";
}

/**
 * The ticked tones that may fill a place, the tone the place is named after first.
 * @param chord - the chord as read
 * @param category - the place
 * @param options - ticked tones
 * @returns semitones above the root; empty when none of them is ticked
 */
export function choicesFor(
  chord: Chord,
  category: Category,
  options: TechniqueOptions,
): readonly AboveRoot[] {
  const basic = basicTone(chord, category);
  const row = categoryRows[chord.family][category];
  const ordered = basic === undefined ? row : [basic, ...row.filter((tone) => tone !== basic)];
  const isFree = (tone: number): boolean => categoryOf(chord, tone) === category;
  return ordered.filter((tone) => options.ticked.includes(tone) && isFree(tone));
}

/**
 * Tones that the symbol itself adds to its four basic ones: the 9 and 13 of a thirteenth chord.
 * @param chord - the chord as read
 * @returns semitones above the root
 */
export function printedColours(chord: Chord): readonly AboveRoot[] {
  const basics = new Set(placesOf(chord).basics.values());
  return chord.tones
    .filter((tone) => tone.kind === "stated" || tone.kind === "implied")
    .filter((tone) => tone.role !== "bass" && !basics.has(tone.aboveRoot))
    .map((tone) => tone.aboveRoot);
}
