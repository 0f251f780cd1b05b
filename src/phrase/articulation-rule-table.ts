import type { MelodyStyle } from "../theory/index.ts";

/** Marks that a default rule may give; what a mark means is in markTable. */
export type ArticulationMark =
  "staccato" | "tenuto" | "accent" | "marcato" | "scoop" | "plop" | "doit" | "fall";

/** A note as the rules see it. A beat is a quarter in metres of quarters and halves. */
export interface ArticulatedNote {
  readonly beats: number;
  readonly isOnBeat: boolean;
  /** Starts off the beat and sounds past the next one. */
  readonly isSyncopated: boolean;
  /** Nothing follows at once. */
  readonly isBeforeRest: boolean;
}

/** One rule; the first that holds in its style decides. */
export interface ArticulationRule {
  readonly id: string;
  readonly styles: readonly MelodyStyle[];
  readonly holds: (note: ArticulatedNote) => boolean;
  readonly marks: readonly ArticulationMark[];
  readonly meaning: string;
}

/**
 * Default articulations. Source: unmarked defaults of swing practice (quarters short, last eighth
 * before a rest short, upbeats tied over accented, eighths in a line legato), values from memory; the
 * published guidelines (Tolson, Music Educators Journal 99(1), 2012) were not read. Other styles:
 * judgement.
 */
export const articulationRules: readonly ArticulationRule[] = Object.freeze<ArticulationRule[]>([
  {
    id: "last-upbeat",
    styles: ["swing", "latin"],
    holds: ({ beats, isOnBeat, isBeforeRest }) => isBeforeRest && !isOnBeat && beats <= 0.5,
    marks: ["marcato"],
    meaning: "The last upbeat before a rest is accented and short.",
  },
  {
    id: "last-eighth",
    styles: ["swing", "straight", "latin"],
    holds: ({ beats, isBeforeRest }) => isBeforeRest && beats <= 0.5,
    marks: ["staccato"],
    meaning: "The last eighth before a rest is short.",
  },
  {
    id: "pushed",
    styles: ["swing", "latin", "straight"],
    holds: ({ isSyncopated }) => isSyncopated,
    marks: ["accent"],
    meaning: "An upbeat held over the next beat is accented.",
  },
  {
    id: "last-quarter",
    styles: ["swing"],
    holds: ({ beats, isOnBeat, isBeforeRest }) => isBeforeRest && isOnBeat && beats === 1,
    marks: ["marcato"],
    meaning: "A quarter on the beat before a rest is accented and short.",
  },
  {
    id: "short-quarter",
    styles: ["swing"],
    holds: ({ beats, isOnBeat }) => isOnBeat && beats === 1,
    marks: ["staccato"],
    meaning: "Quarters on the beat are short.",
  },
]);

/** What a mark does to a played note. */
export interface MarkRow {
  /** Sounding share of the written length. */
  readonly share: number;
  /** Steps louder. */
  readonly louder: 0 | 1;
}

/**
 * Source: accent full value, marcato half to two thirds of the value, staccato short: E. Rogers,
 * big band arranging series (articulation); the other figures judgement.
 */
export const markTable: Readonly<Record<ArticulationMark, MarkRow>> = Object.freeze({
  staccato: Object.freeze({ share: 0.5, louder: 0 }),
  tenuto: Object.freeze({ share: 1, louder: 0 }),
  accent: Object.freeze({ share: 0.97, louder: 1 }),
  marcato: Object.freeze({ share: 0.6, louder: 1 }),
  scoop: Object.freeze({ share: 0.95, louder: 0 }),
  plop: Object.freeze({ share: 0.95, louder: 0 }),
  doit: Object.freeze({ share: 1, louder: 0 }),
  fall: Object.freeze({ share: 0.9, louder: 0 }),
});

/** Sounding share of a note without a mark. Source: judgement, lines are legato. */
export const unmarkedShare = 0.95;
