/** Words and signs of chord symbols, by what they mean. */
export type ChordWord =
  | "half-diminished"
  | "minor"
  | "major"
  | "triangle"
  | "diminished"
  | "augmented"
  | "dominant"
  | "suspended"
  | "add"
  | "omit"
  | "alt";

/** A word with the spellings players use; the first row that fits wins. */
export interface ChordWordRow {
  readonly word: ChordWord;
  /** Regular expression for the spellings; a full stop may follow words. */
  readonly spellings: string;
}

/**
 * Spellings in use. Capital M is major and small m minor; "ma" before "dd", "ug", "lt" is an m
 * followed by add, aug, alt.
 * Source: three schools, MA and MI (C. Brandt & C. Roemer, Standardized Chord Symbol Notation, 1976),
 * maj and m, triangle and dash (R. Stone, chord symbol practice); the rest is common practice, no
 * single source.
 */
export const CHORD_WORDS: readonly ChordWordRow[] = Object.freeze([
  { word: "half-diminished", spellings: "ø|[Hh]alf-?\\s?[Dd]im(?:inished)?" },
  { word: "minor", spellings: "[Mm]inor|MINOR|[Mm]in|MIN|[Mm]i|MI" },
  {
    word: "major",
    spellings: "[Mm]ajor|MAJOR|[Mm]aj|MAJ|(?:[Mm]a|MA)(?!dd|ug|lt|DD|UG|LT)|M|j(?=\\s?\\d)",
  },
  { word: "triangle", spellings: "Δ" },
  { word: "minor", spellings: "m" },
  { word: "omit", spellings: "[Oo]mit|OMIT|[Nn]o|NO|[Ww]ithout" },
  { word: "diminished", spellings: "[Dd]iminished|[Dd]im|DIM|°|o" },
  { word: "augmented", spellings: "[Aa]ugmented|[Aa]ug|AUG" },
  { word: "dominant", spellings: "[Dd]ominant|[Dd]om|DOM" },
  { word: "suspended", spellings: "[Ss]uspended|[Ss]us|SUS" },
  { word: "add", spellings: "[Aa]dd|ADD" },
  { word: "alt", spellings: "[Aa]ltered|[Aa]lt|ALT" },
] as const);
