import type { Count } from "../../base/index.ts";
import type { Clef, Transposition } from "../../band/index.ts";
import type { Reading } from "../../notation/index.ts";
import type { Metre } from "../../theory/index.ts";
import {
  ScoreFault,
  type FileDirection,
  type FileEnding,
  type FileHarmony,
  type FileNote,
} from "./reading-types.ts";
import { textOfChild, type XmlElement } from "./xml-reader.ts";

/** What the walk through a part carries from bar to bar. */
export interface Walk {
  /** Factor from the part's divisions to the score's. */
  scale: number;
  readonly division: Count;
  metre: Metre;
  fifths: { readonly count: number; readonly mode: string } | undefined;
  transposition: Transposition;
  /** From written to sounding as this file writes it; nothing in a concert score. */
  toSounding: Reading;
  clef: Clef | undefined;
  readonly remark: (text: string) => void;
  readonly name: string;
  readonly slurs: Set<string>;
}

/** What one bar gathers. */
export interface Gathering {
  readonly label: string;
  at: number;
  reach: number;
  chordAt: number;
  readonly notes: FileNote[];
  readonly harmonies: FileHarmony[];
  readonly directions: FileDirection[];
  readonly endings: FileEnding[];
  beginsRepeat: boolean;
  repeatTimes: Count | undefined;
}

/**
 * Bar and part in words.
 * @param walk - the walk
 * @param bar - the bar
 * @returns "Bar 3, Alto 1"
 */
export const where = (walk: Walk, bar: Gathering): string => `Bar ${bar.label}, ${walk.name}`;

/**
 * Moves the place where the next note begins.
 * @param length - divisions, below 0 to step back
 * @param walk - the walk
 * @param bar - the bar
 * @throws ScoreFault before the beginning of the bar
 */
export function moveBy(length: number, walk: Walk, bar: Gathering): void {
  bar.at += length;
  if (bar.at < 0)
    throw new ScoreFault(
      "musicxml-backup",
      `${where(walk, bar)}: the file steps back to before the bar.`,
    );
  bar.reach = Math.max(bar.reach, bar.at);
}

/**
 * Length of a note, rest or step.
 * @param element - holds a duration
 * @param walk - the walk
 * @param bar - the bar
 * @returns the score's divisions
 * @throws ScoreFault where there is no usable length
 */
export function durationOf(element: XmlElement, walk: Walk, bar: Gathering): number {
  const text = textOfChild(element, "duration") ?? "";
  const length = /^\d{1,9}(\.\d{1,6})?$/.test(text) ? Number(text) * walk.scale : Number.NaN;
  if (Number.isInteger(length) && length > 0) return length;
  throw new ScoreFault(
    "musicxml-duration",
    `${where(walk, bar)}: a note, rest or step has no usable length.`,
  );
}
