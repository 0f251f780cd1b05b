import type { InstrumentId } from "../band/index.ts";

/**
 * How long a player goes on without a breath, in seconds at f; and how much silence is a breath.
 * Source: judgement, to be reviewed by a band director; low brass and flute need most air.
 */
export const breathTable = Object.freeze({
  /** Silence that lets a player catch a breath: an eighth rest at 170. */
  breathSeconds: 0.17,
  /** A note that is held so long leaves room for a breath at its end. */
  longNoteSeconds: 0.9,
  longestSeconds: Object.freeze<Record<InstrumentId, number>>({
    trumpet: 9,
    flugelhorn: 9,
    trombone: 8,
    "bass-trombone": 6,
    horn: 9,
    tuba: 5,
    "soprano-sax": 11,
    "alto-sax": 10,
    "tenor-sax": 9,
    "baritone-sax": 7,
    flute: 7,
    clarinet: 11,
    "bass-clarinet": 8,
    piano: Infinity,
    "double-bass": Infinity,
  }),
  /** Share of the players that may breathe at one moment. */
  mostAtOnce: 0.25,
});
