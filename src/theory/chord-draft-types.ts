import type { Count } from "../base/index.ts";
import type { ChoiceId } from "./chord-choice-table.ts";

/** Colour of the third and fifth as a symbol's first word states it. */
export type ChordQuality = "major" | "minor" | "diminished" | "half-diminished" | "augmented";

/** The number a symbol prints after its quality; 0 when there is none, 69 for six-nine. */
export type ChordExtension = 0 | 5 | 6 | 7 | 9 | 11 | 13 | 69;

/** A change printed behind the basic symbol. */
export interface ChordMark {
  readonly kind: "alter" | "add" | "omit";
  /** ASCII degree label: "b9", "13", "3"; "7" is the major seventh. */
  readonly degree: string;
  /** Index into the plain text where it begins. */
  readonly at: Count;
}

/** A chord symbol taken apart, before its tones are worked out. */
export interface ChordDraft {
  readonly quality: ChordQuality;
  /** A sign for major was printed; means the seventh where there is one. */
  readonly isMajorSeventh: boolean;
  readonly extension: ChordExtension;
  readonly suspension: 0 | 2 | 4;
  /** "alt" was printed. */
  readonly isAlt: boolean;
  /** In printed order. */
  readonly marks: readonly ChordMark[];
  /** Readings chosen on the way. */
  readonly choices: readonly ChoiceId[];
}

/** Why text is no chord symbol. */
export interface Refusal {
  readonly code: string;
  readonly message: string;
  /** Index into the plain text. */
  readonly at: Count;
  /** Symbols that may have been meant, most likely first; not yet checked. */
  readonly candidates: readonly string[];
}

/** What a reader of a part gives back. */
export type Drafted<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: Refusal };
