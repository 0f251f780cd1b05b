import type { InstrumentId } from "../band/index.ts";

/**
 * What a player's move from one note to the next costs. Whole numbers on the scale of the voicing
 * tables: 1 just preferred, 3 usually otherwise, 6 needs a reason, 10 and more last resort.
 * Source: steps before leaps, lower voices moving under approach notes (T. Pease & K. Pullig), inner
 * voices free to cross but never the lead: common practice; figures judgement.
 */
export const moveCosts = Object.freeze({
  /** By size of the move in semitones; index 0 is a repeated note under a moving melody. */
  bySize: Object.freeze([2, 0, 0, 1, 1, 2, 4, 3, 5, 5, 7, 8, 5]),
  /** Beyond an octave: this, and one for each further semitone. */
  beyondOctave: 8,
  /** Added for a brass player's leap of this many semitones or more: it may not speak. */
  brassLeap: Object.freeze({ from: 8, cost: 2 }),
  /** Coming in or dropping out where the melody goes on. */
  enter: 8,
  leave: 10,
  /** Taking the melody over from the others, or giving it up. */
  leadChange: 3,
  /** A section's first chair overtaken by another of its section, for each who does. */
  overFirstChair: 4,
});

/**
 * Time from note to note in seconds: up to the first it is fast, up to the second medium, else slow.
 * Source: judgement; 0.2 s is an eighth note at 150.
 */
export const speedLimits = Object.freeze({ fast: 0.2, medium: 0.42 });

/**
 * Cost of slide travel by positions travelled, 0 to 6. Source: judgement after players' practice:
 * three positions are easy at any speed but the highest, first to sixth is a long way.
 */
export const slideCosts = Object.freeze({
  fast: Object.freeze([0, 0, 0, 1, 3, 5, 7]),
  medium: Object.freeze([0, 0, 0, 0, 1, 2, 4]),
  slow: Object.freeze([0, 0, 0, 0, 0, 0, 1]),
});

/** A place on an instrument that is awkward to cross. */
export interface RegisterBreak {
  /** Highest written note below the break, as MIDI number. */
  readonly below: number;
  readonly cost: { readonly fast: number; readonly medium: number; readonly slow: number };
  readonly source: string;
}

const saxBreak: RegisterBreak = Object.freeze({
  below: 73,
  cost: Object.freeze({ fast: 1, medium: 0, slow: 0 }),
  source: 'B. Pimentel, "Crossing the break (or not) on saxophone" (2011): between C#5 and D5',
});
const clarinetBreak: RegisterBreak = Object.freeze({
  below: 70,
  cost: Object.freeze({ fast: 2, medium: 1, slow: 0 }),
  source: "clarinet-now.com, registers: throat notes end at Bb4",
});
const fluteBreak: RegisterBreak = Object.freeze({
  below: 73,
  cost: Object.freeze({ fast: 1, medium: 0, slow: 0 }),
  source: "fingering changes from C#5 to D5: common practice, no single source",
});

/** Breaks by instrument, in written pitch. Source: each row names its own; costs judgement. */
export const registerBreaks: Readonly<Partial<Record<InstrumentId, RegisterBreak>>> = Object.freeze(
  {
    "soprano-sax": saxBreak,
    "alto-sax": saxBreak,
    "tenor-sax": saxBreak,
    "baritone-sax": saxBreak,
    clarinet: clarinetBreak,
    "bass-clarinet": clarinetBreak,
    flute: fluteBreak,
  },
);

/**
 * The saxophone's low keys, written Bb3, B3 and C#4 as MIDI numbers, lie under one little finger; from
 * one to another is slow. Source: common practice, no single source; costs judgement.
 */
export const lowSaxKeys = Object.freeze({
  notes: Object.freeze([58, 59, 61]),
  cost: Object.freeze({ fast: 3, medium: 1, slow: 0 }),
});
