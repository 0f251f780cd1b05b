import type { Problem } from "../base/index.ts";
import type { Colour } from "../theory/index.ts";
import type { Dynamic, Player } from "../band/index.ts";
import type { Lock, RuleId, RuleSettings } from "../voicing/index.ts";

/** State of one of the twelve tones of the question strip. */
export type ToneChoice = "off" | "on" | "required";

/**
 * What the user asked, as plain data that can be saved, shared and undone. Text stays as typed,
 * so that bad input is never lost.
 */
export interface Inquiry {
  readonly chordText: string;
  readonly melodyText: string;
  readonly dynamic: Dynamic;
  readonly lineUpName: string;
  readonly players: readonly Player[];
  readonly colour: Colour;
  /** Changes the user made to the preset, by semitones above the root. */
  readonly toneChoices: Readonly<Partial<Record<number, ToneChoice>>>;
  readonly bassSounds: boolean;
  readonly rules: RuleSettings;
  readonly strictLowIntervals: boolean;
  readonly clusterSetting: boolean;
  readonly shortNote: boolean;
  readonly homes: boolean;
  readonly locks: readonly Lock[];
  readonly leadPlayer?: string;
  readonly octaveBelowPlayer?: string;
  readonly octaveAbovePlayer?: string;
}

/** Field of the page that a problem belongs to. */
export type InquiryField = "chord" | "melody" | "line-up" | "tones" | "rules" | "locks";

/** A problem with the field it belongs to. */
export interface FieldProblem extends Problem {
  readonly field: InquiryField;
}

/** One of the twelve tones above the root, as the strip shows it. */
export interface StripTone {
  readonly aboveRoot: number;
  /** Spelled name for this chord, ASCII: "Eb". */
  readonly name: string;
  /** Degree, ASCII: "b7". */
  readonly degree: string;
  readonly choice: ToneChoice;
  /** Why it is on, or what speaks against it, in a few words. */
  readonly remark: string;
}

/** Rule id with its name in words, for the page's list of switches. */
export interface RuleText {
  readonly id: RuleId;
  readonly name: string;
  readonly meaning: string;
  readonly source: string;
}
