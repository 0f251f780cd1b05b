import type { RuleId, RuleSettings } from "./voicing-types.ts";

/** A hard rule in words, with where it comes from. */
export interface RuleRow {
  readonly id: RuleId;
  readonly name: string;
  readonly meaning: string;
  readonly source: string;
}

/** The hard rules; each can be switched off. */
export const ruleTable: readonly RuleRow[] = Object.freeze([
  {
    id: "H1",
    name: "Melody on top",
    meaning: "The melody sounds and nothing lies above it.",
    source: "common practice, no single source",
  },
  {
    id: "H2",
    name: "Ticked tones only",
    meaning: "Only tones ticked for this chord sound; a foreign melody note sounds as melody only.",
    source: "tension substitution after G. Lindsay, Jazz Arranging Techniques (2005), ch. 10",
  },
  {
    id: "H3",
    name: "Inside each player's range",
    meaning:
      "Nobody plays outside the personal range or three semitones beyond what the level makes easy.",
    source: "range tables by instrument and level, see the band's tables",
  },
  {
    id: "H4",
    name: "The chord is complete",
    meaning: "Third and seventh, and what the symbol spells out, sound as far as there are notes.",
    source: "jazz arranging tutorial (third and seventh above the root); common practice",
  },
  {
    id: "H5",
    name: "Low-interval limits",
    meaning: "No interval lies so low that it turns to mud; softer dynamics tolerate more.",
    source: "G. Lindsay as carried by elm-music-theory; R. Hoffmann, Low Interval Limits",
  },
  {
    id: "H5b",
    name: "Lowest note over the bass",
    meaning: "The lowest horn keeps the low-interval limit against the bass note below it too.",
    source: "D. Lowell and K. Pullig, Arranging for Large Jazz Ensemble (2003)",
  },
  {
    id: "H6",
    name: "No minor ninths",
    meaning: "No two notes lie a minor ninth apart, root under ♭9 on a dominant excepted.",
    source: "C. Israels, Exploring Jazz Arranging, lesson 5",
  },
  {
    id: "H7",
    name: "No semitone under the melody",
    meaning: "No note lies a semitone under the melody.",
    source: "G. Lindsay, Jazz Arranging Techniques; C. Israels, lesson 5",
  },
  {
    id: "H8",
    name: "No holes",
    meaning:
      "Neighbours lie at most an octave apart; the lowest pair up to a twelfth over root, fifth or bass note.",
    source: "elm-music-theory after G. Lindsay (adjacent spacing); wide bottom: D. Schiff",
  },
  {
    id: "H9",
    name: "Clear foundation",
    meaning: "Below D3 only the bass note, the root and the fifth sound.",
    source: "C. Israels, Exploring Jazz Arranging, lesson 15",
  },
]);

/** All rules on. */
export const allRules: RuleSettings = Object.freeze({
  H1: true,
  H2: true,
  H3: true,
  H4: true,
  H5: true,
  H5b: true,
  H6: true,
  H7: true,
  H8: true,
  H9: true,
});
