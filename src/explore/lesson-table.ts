import type { Idea } from "./lesson-types.ts";

/** How one idea's pairs are found. */
export interface LessonRule {
  readonly idea: Idea;
  /** Least difference of a pair, in the idea's unit. */
  readonly least: number;
  /** Least relation of the larger value to the smaller; 1 where the difference says enough. */
  readonly leastRatio: number;
  /** A difference beyond this teaches nothing more. */
  readonly clear: number;
  /** Worth of one unit of difference, against the prices in `lessonPrices`. */
  readonly worth: number;
  /** What to say where no pair exists. */
  readonly gap: string;
}

/** Ideas in the order of the lesson. Source: the project's own judgement by ear and eye. */
export const lessonRules: readonly LessonRule[] = Object.freeze([
  {
    idea: "span",
    least: 5,
    leastRatio: 1,
    clear: 14,
    worth: 6,
    gap: "No two textures of this question have the same notes and players and spans a fourth or more apart. A lower bottom player or a higher melody opens more room.",
  },
  {
    idea: "weight",
    least: 2,
    leastRatio: 1.25,
    clear: 24,
    worth: 3,
    gap: "No two textures of this question sound the same notes with clearly more and fewer players. A larger line-up can double notes.",
  },
  {
    idea: "density",
    least: 0.4,
    leastRatio: 1.2,
    clear: 2.4,
    worth: 35,
    gap: "No two textures of this question fill the same span with clearly more and fewer notes. More players or more ticked tones can fill it.",
  },
  {
    idea: "interleaving",
    least: 0.2,
    leastRatio: 1,
    clear: 0.8,
    worth: 100,
    gap: "No texture of this question can be had both by section and interlocked. It takes two sections with two players or more in one of them.",
  },
] satisfies readonly LessonRule[]);

/** What a pair pays for differing in something else. Source: the project's own judgement. */
export const lessonPrices = Object.freeze({
  /** One note that the two do not share, beyond the one that must move. */
  note: 8,
  /** One player on another note. */
  player: 2,
  /** A whole 1 of interleaving. */
  interleaving: 60,
  /** One note or one player away from where the learner is; a semitone of span counts a third. */
  away: 3,
  /** One note missing from a full chord: a pair of thin chords shows little. */
  missing: 15,
});

/** Notes from which a chord is full: root, third, seventh, a tension and the melody. */
export const fullNotes = 5;

/** Interleaving within this counts as the same, when it is not the idea. */
export const sameInterleaving = 0.25;
/** Most places of a track: so many swatches fit beside the ways to hear. */
export const mostOnTrack = 9;
