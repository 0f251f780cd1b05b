import type { Count } from "../../base/index.ts";
import type { Clef, Transposition } from "../../band/index.ts";
import type { Key, Metre, SpelledPitch } from "../../theory/index.ts";
import type { ArticulationMark, PartDirection } from "../score/score-model.ts";

/** Why a score cannot be taken. Thrown while a file is walked, never leaves the reader. */
export class ScoreFault extends Error {
  readonly code: string;

  constructor(code: string, message: string) {
    super(message);
    this.code = code;
  }
}

/** One note head or chord member as it stands in the file; times from the start of its bar. */
export interface FileNote {
  readonly at: Count;
  readonly length: Count;
  /** Sounding. */
  readonly pitch: SpelledPitch;
  readonly voice: string;
  readonly isTiedFrom: boolean;
  readonly isTiedOn: boolean;
  readonly isSlurredOn: boolean;
  readonly marks: readonly ArticulationMark[];
}

/** A chord symbol as it stands in the file, already at concert pitch. */
export interface FileHarmony {
  readonly at: Count;
  readonly symbol: string;
}

/** Something over or under the staff. */
export interface FileDirection {
  readonly at: Count;
  readonly what:
    | PartDirectionBody
    | { readonly rehearsal: string }
    | { readonly wordsOverScore: string }
    | TempoMark;
}

/** What a tempo mark says. */
export interface TempoMark {
  readonly tempo?: number;
  readonly style?: string;
  readonly swing?: { readonly first: Count; readonly second: Count };
}

type WithoutOnset<T> = T extends unknown ? Omit<T, "onset"> : never;
/** A part's direction without its time. */
export type PartDirectionBody = WithoutOnset<PartDirection>;

/** An ending bracket's begin or end. */
export interface FileEnding {
  readonly passes: readonly Count[];
  readonly isStart: boolean;
}

/** One bar of one part. */
export interface FileBar {
  /** As the file numbers it, for messages. */
  readonly label: string;
  readonly isImplicit: boolean;
  /** How far its notes and rests reach. */
  readonly reach: Count;
  readonly notes: readonly FileNote[];
  readonly harmonies: readonly FileHarmony[];
  readonly directions: readonly FileDirection[];
  readonly metre: Metre;
  /** At concert pitch; null without a signature; undefined where the part never said. */
  readonly key: Key | null | undefined;
  readonly beginsRepeat: boolean;
  readonly repeatTimes: Count | undefined;
  readonly endings: readonly FileEnding[];
}

/** One part of a file, all times in the score's division. */
export interface FilePart {
  readonly id: string;
  readonly bars: readonly FileBar[];
  /** What the part adds to written pitch, or would in a transposed score. */
  readonly transposition: Transposition;
  readonly clef: Clef;
}
