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
function basicTones(chord: Chord): ReadonlyMap<Category, AboveRoot> {
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

/**
 * The tone a place of the chord is named after.
 * @param chord - the chord as read
 * @param category - root, third (or what suspends it), fifth, seventh (or sixth)
 * @returns semitones above the root, or undefined where the chord has none (a triad's seventh)
 */
export function basicTone(chord: Chord, category: Category): AboveRoot | undefined {
  return basicTones(chord).get(category);
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
  const basics = basicTones(chord);
  for (const category of categories) if (basics.get(category) === tone) return category;
  const row = categoryRows[chord.family];
  for (const category of categories) if (row[category].includes(tone)) return category;
  for (const category of categories) if (basics.get(category) === tone - 1) return category;
  return placeOfForeign[tone] ?? "root";
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
  const basics = new Set(basicTones(chord).values());
  return chord.tones
    .filter((tone) => tone.kind === "stated" || tone.kind === "implied")
    .filter((tone) => tone.role !== "bass" && !basics.has(tone.aboveRoot))
    .map((tone) => tone.aboveRoot);
}
