import type { Count } from "../base/index.ts";
import type { ChoiceId } from "./chord-choice-table.ts";
import type {
  ChordDraft,
  ChordExtension,
  ChordMark,
  ChordQuality,
  Refusal,
} from "./chord-draft-types.ts";
import type { ChordToken } from "./chord-token.ts";

/** A word that still needs its number, and where it stands. */
export interface WantedNumber {
  readonly word: "add" | "omit" | "dominant" | "major";
  readonly at: Count;
}

/** A chord symbol while its pieces are taken one by one; lives inside one reading only. */
export interface ChordWork {
  /** The plain text. */
  readonly text: string;
  quality: ChordQuality | undefined;
  isMajorSeventh: boolean;
  extension: ChordExtension;
  suspension: 0 | 2 | 4;
  isAlt: boolean;
  marks: ChordMark[];
  choices: ChoiceId[];
  /** What a number means behind "add" or "omit". */
  mode: "plain" | "adding" | "omitting";
  /** Where the bracket that is open was opened. */
  bracketAt: Count | undefined;
  /** Where a comma, slash or bracket stands that something must follow. */
  separatorAt: Count | undefined;
  wantsNumber: WantedNumber | undefined;
}

/** Token kinds by name. */
export type TokenOf<K extends ChordToken["kind"]> = Extract<ChordToken, { readonly kind: K }>;

/** How many pieces a step took, or why it could not. */
export type Taken = 1 | 2 | Refusal;

/**
 * A symbol of which only the root has been read.
 * @param text - the plain text
 * @returns empty work
 */
export function emptyWork(text: string): ChordWork {
  return {
    text,
    quality: undefined,
    isMajorSeventh: false,
    extension: 0,
    suspension: 0,
    isAlt: false,
    marks: [],
    choices: [],
    mode: "plain",
    bracketAt: undefined,
    separatorAt: undefined,
    wantsNumber: undefined,
  };
}

/**
 * Whether only the root has been read so far.
 * @param work - work so far
 * @returns true before any quality, number, suspension or mark
 */
export function isFresh(work: ChordWork): boolean {
  return work.quality === undefined && work.extension === 0 && hasNoTail(work) && !work.isAlt;
}

/**
 * Whether no suspension or mark has been read yet.
 * @param work - work so far
 * @returns true before any suspension or mark
 */
export function hasNoTail(work: ChordWork): boolean {
  return work.suspension === 0 && work.marks.length === 0;
}

/**
 * Notes a printed alteration, addition or omission.
 * @param into - work so far
 * @param kind - what the mark does
 * @param degree - ASCII degree label
 * @param at - where it stands
 * @returns 1: one piece was taken
 */
export function pushMark(into: ChordWork, kind: ChordMark["kind"], degree: string, at: Count): 1 {
  into.marks.push({ kind, degree, at });
  return 1;
}

/**
 * Says that a word lacks its number.
 * @param wanted - the word and its place
 * @param stem - text up to where the number should stand
 * @returns the refusal
 */
export function missingNumber({ word, at }: WantedNumber, stem: string): Refusal {
  const table = { add: ["9", "11"], omit: ["3", "5"], dominant: ["7", "9"], major: ["7", "9"] };
  const numbers = table[word];
  return {
    code: "chord-number-missing",
    message: `“${word}” needs a number behind it, such as ${numbers[0] ?? ""}.`,
    at,
    candidates: numbers.map((number) => stem + number),
  };
}

/**
 * The symbol as far as it makes sense before a bad piece: without a bracket or comma that hangs.
 * @param text - the plain text
 * @param at - where the bad piece begins
 * @returns text that may be readable
 */
export function stemBefore(text: string, at: Count): string {
  return text.slice(0, at).replace(/[\s(,/[]+$/, "");
}

/**
 * Turns finished work into a draft.
 * @param work - all pieces taken
 * @returns the symbol taken apart
 */
export function draftOf(work: ChordWork): ChordDraft {
  const { extension, suspension, isAlt, marks, choices } = work;
  const quality = work.quality ?? "major";
  const isBareHalfDiminished = quality === "half-diminished" && extension === 0;
  return {
    quality,
    isMajorSeventh: work.isMajorSeventh,
    extension: isBareHalfDiminished ? 7 : extension,
    suspension,
    isAlt,
    marks,
    choices: isBareHalfDiminished ? [...choices, "half-diminished-word"] : choices,
  };
}
