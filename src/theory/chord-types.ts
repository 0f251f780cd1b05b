import type { PitchClass } from "../base/index.ts";
import type { SpelledPitchClass } from "./spelled-pitch-types.ts";

/** Semitones above a chord's root, 0 to 11. */
export type AboveRoot = number;

/** Chord families; each has one row in the table of required groups. */
export type ChordFamily =
  | "major"
  | "minor"
  | "diminished"
  | "augmented"
  | "suspended-fourth"
  | "suspended-second"
  | "power"
  | "sixth"
  | "minor-sixth"
  | "major-seventh"
  | "minor-major-seventh"
  | "dominant"
  | "altered-dominant"
  | "dominant-suspended"
  | "minor-seventh"
  | "half-diminished"
  | "diminished-seventh"
  | "no-chord";

/** What a tone is in its chord. */
export type ToneRole =
  | "root"
  | "third"
  | "suspended-second"
  | "suspended-fourth"
  | "fifth"
  | "sixth"
  | "seventh"
  | "ninth"
  | "eleventh"
  | "thirteenth"
  | "bass";

/**
 * How a tone belongs to its chord. `stated`: named or spelled out by the symbol. `implied`: comes
 * with what the symbol states (the ninth of a 13). `available`: a tension players may add.
 * `avoid`: within the scale, but not sounded against this chord except as a passing or lead note.
 */
export type ToneKind = "stated" | "implied" | "available" | "avoid";

/** One tone of a chord. */
export interface ChordTone {
  /** Spelled for this chord: the third of A♭ minor is C♭. */
  readonly spelled: SpelledPitchClass;
  /** Spelling as text with ASCII accidentals, e.g. "Cb", "F#", "Bbb". */
  readonly name: string;
  readonly pitchClass: PitchClass;
  readonly aboveRoot: AboveRoot;
  /** Degree as players write it, ASCII: "1", "b3", "3", "b7", "7", "bb7", "9", "#11", "b13". */
  readonly degree: string;
  readonly role: ToneRole;
  readonly kind: ToneKind;
  /** True for ♭9 ♯9 ♯11 ♭13 on a dominant: an altered tension, not a natural one. */
  readonly isAltered: boolean;
  /** True for an available tension that the preset `tensions` ticks. */
  readonly isNaturalTension: boolean;
}

/** A chord symbol, read. */
export interface Chord {
  /** What the user typed, trimmed. */
  readonly written: string;
  /** The same chord in this project's one spelling, ASCII, e.g. "C7(b9,b13)". */
  readonly symbol: string;
  /** The same for people, with ♭ ♯ ° ø signs. */
  readonly display: string;
  readonly family: ChordFamily;
  /** C when there is no chord; ask `family` first. */
  readonly root: SpelledPitchClass;
  readonly rootPitchClass: PitchClass;
  /** The slash bass, or the root. */
  readonly bass: SpelledPitchClass;
  readonly bassPitchClass: PitchClass;
  readonly hasSlashBass: boolean;
  /** All tones, root upwards by `aboveRoot`; each pitch class once. Empty for no chord. */
  readonly tones: readonly ChordTone[];
  /** Semitones above the root of alterations and added tones the symbol prints, in printed order. */
  readonly printedExtras: readonly AboveRoot[];
  /** Where the trade is split, the reading chosen here, one sentence each; shown to the user. */
  readonly choices: readonly string[];
}

/** Presets of ticked tones: what the symbol says; plus natural tensions; dominants altered. */
export type Colour = "plain" | "tensions" | "altered";

/**
 * Part of a note in its chord, as the cost tables ask for it: root; third, or what stands for it in
 * a suspended chord; fifth; seventh, or the sixth of a sixth chord; natural tension; altered
 * tension; foreign.
 */
export type ChordPart = "R" | "3" | "5" | "7" | "T" | "A" | "X";
