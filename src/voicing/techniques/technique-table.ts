import type { TechniqueId } from "../voicing-types.ts";

/** What the page says of a technique. */
export interface TechniqueText {
  readonly id: TechniqueId;
  readonly label: string;
  /** One sentence. */
  readonly meaning: string;
  readonly source: string;
}

const text = (
  id: TechniqueId,
  label: string,
  meaning: string,
  source: string,
): readonly [TechniqueId, TechniqueText] => [id, Object.freeze({ id, label, meaning, source })];

const LINDSAY = "G. Lindsay, Jazz Arranging Techniques (2005)";
const ISRAELS = "C. Israels, Exploring Jazz Arranging";
const COMMON = "common practice, no single source";

/** Names and meanings of the techniques, in the order in which the page lists them. */
export const techniqueTexts: ReadonlyMap<TechniqueId, TechniqueText> = new Map([
  text("unison", "Unison", "Everyone on the melody at the same pitch.", COMMON),
  text("octaves", "Octaves", "Everyone on the melody, in two octaves or more.", COMMON),
  text(
    "close",
    "Close",
    "The melody with three notes right below it inside one octave, one for each of root, third, " +
      "fifth and seventh or its substitute; three notes in all for a triad.",
    `${LINDSAY}, ch. 10`,
  ),
  text("drop-2", "Drop 2", "Close, with the second voice from the top an octave lower.", COMMON),
  text("drop-3", "Drop 3", "Close, with the third voice from the top an octave lower.", COMMON),
  text(
    "drop-2-4",
    "Drop 2 and 4",
    "Close, with the second and fourth voices from the top an octave lower.",
    LINDSAY,
  ),
  text(
    "double-lead",
    "Double lead",
    "Close, with the melody doubled an octave lower as the bottom voice.",
    `${LINDSAY}, ch. 10; ${ISRAELS}, lesson 15`,
  ),
  text(
    "drop-2-double-lead",
    "Drop 2 with double lead",
    "Drop 2, with the melody doubled an octave lower, above the dropped voice.",
    COMMON,
  ),
  text(
    "spread",
    "Spread",
    "Root at the bottom, third or seventh next, the rest opened out above, no gap over an octave.",
    LINDSAY,
  ),
  text(
    "upper-structure",
    "Upper-structure triad",
    "Third and seventh below, a complete triad with at least one tension above them.",
    COMMON,
  ),
  text("quartal", "Quartal", "A stack of fourths, with or without a third on top.", COMMON),
  text(
    "fifths-pair",
    "Fifths pair",
    "Two stacks of fifths, the upper one a semitone or a whole tone above the lower one.",
    COMMON,
  ),
  text("cluster", "Cluster", "Notes in seconds, side by side.", LINDSAY),
  text(
    "tutti-octave-copy",
    "Tutti, octave copy",
    "Trombones repeat the trumpets' notes an octave lower.",
    `${ISRAELS}, lesson 19`,
  ),
  text(
    "tutti-guide-tones",
    "Tutti, guide tones",
    "Trombones hold thirds and sevenths, trumpets a triad with a tension above them.",
    `${ISRAELS}, lesson 19`,
  ),
  text(
    "tutti-wide",
    "Tutti, wide",
    "Baritone on the root, a trombone a fifth above it, trombones on third and seventh, the rest " +
      "spread above.",
    `${ISRAELS}, lesson 19`,
  ),
]);
