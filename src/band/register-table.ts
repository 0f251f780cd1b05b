/**
 * Registers: named stretches of each instrument, in written pitch, low to high, without gaps. They
 * reach past the ordinary compass where lead players go. Descriptions of the trumpet after a
 * university portfolio (Valencia), of horn after Blatter, of saxes and flute after the Jazz
 * arranging tutorial, of clarinet after a table of clarinet ranges. Boundaries of trumpet,
 * flugelhorn, trombones and saxes are values from memory; rows marked `judgement` are ours.
 */
import type { InstrumentId, Register } from "./band-types.ts";

/** One stretch of an instrument. */
export interface RegisterRow {
  /** Written pitches, both included. */
  readonly written: readonly [low: string, high: string];
  readonly label: string;
  readonly strength: Register["strength"];
  readonly source: string;
}

const row = (
  low: string,
  high: string,
  strength: Register["strength"],
  label: string,
  source: string,
): RegisterRow => Object.freeze({ written: [low, high] as const, label, strength, source });

const WORDS = "published description, boundary from memory";
const OURS = "judgement";

const saxRows = (bottom: string): readonly RegisterRow[] => [
  row(bottom, "D4", "risky", "forced, may not speak softly", WORDS),
  row("Eb4", "C6", "even", "even", "value from memory"),
  row("C#6", "F6", "tiring", "thin, tiring", OURS),
  row("F#6", "C7", "risky", "altissimo, solo only", "published description"),
];

/** Low to high, by instrument. */
export const registerTable: Readonly<Record<InstrumentId, readonly RegisterRow[]>> = Object.freeze({
  trumpet: [
    row("F#3", "B3", "weak", "dark, weak in a tutti", WORDS),
    row("C4", "G5", "even", "full, brilliant", WORDS),
    row("Ab5", "C6", "tiring", "penetrating, tiring", WORDS),
    row("C#6", "G6", "risky", "lead players only", "published description"),
  ],
  flugelhorn: [
    row("F#3", "B3", "weak", "dark, weak", OURS),
    row("C4", "G5", "even", "warm, softer than a trumpet", WORDS),
    row("Ab5", "Bb5", "risky", "thin, poor tuning", "published description, boundary from memory"),
  ],
  trombone: [
    row("E2", "A2", "weak", "heavy, dark", "value from memory"),
    row("Bb2", "F4", "even", "full", "value from memory"),
    row("F#4", "Bb4", "tiring", "intense, tiring", WORDS),
    row("B4", "F5", "risky", "lead players only", OURS),
  ],
  "bass-trombone": [
    row("Bb1", "F2", "strong", "weighty, good on the root", "value from memory"),
    row("F#2", "C4", "even", "full", OURS),
    row("C#4", "Bb4", "tiring", "a tenor trombone's place", OURS),
  ],
  horn: [
    row("F#2", "F#3", "weak", "dark, does not project", WORDS),
    row("G3", "F5", "even", "heroic", WORDS),
    row("F#5", "C6", "risky", "risky", OURS),
  ],
  tuba: [
    row("F1", "F3", "even", "round", OURS),
    row("F#3", "Bb3", "tiring", "light, tiring", OURS),
    row("B3", "F4", "risky", "solo only", OURS),
  ],
  "soprano-sax": saxRows("Bb3"),
  "alto-sax": saxRows("Bb3"),
  "tenor-sax": saxRows("Bb3"),
  "baritone-sax": [
    row("A3", "D4", "strong", "secure, good on the root", "published description"),
    ...saxRows("Bb3").slice(1),
  ],
  flute: [
    row("C4", "B4", "weak", "not heard without a microphone", "published description"),
    row("C5", "A6", "even", "clear", OURS),
    row("Bb6", "D7", "risky", "avoid", "published description: top fourth of the range"),
  ],
  clarinet: [
    row("E3", "F#4", "even", "chalumeau, dark", "published division; strength common practice"),
    row("G4", "Bb4", "weak", "throat notes, dull", "published division; strength common practice"),
    row("B4", "C6", "strong", "clarion, bright", "published division; strength common practice"),
    row("C#6", "C7", "risky", "shrill, strained", "published division; strength common practice"),
  ],
  "bass-clarinet": [
    row("Eb3", "F#4", "strong", "chalumeau, dark and full", "division as the clarinet; judgement"),
    row("G4", "Bb4", "weak", "throat notes, dull", "division as the clarinet; judgement"),
    row("B4", "C6", "even", "clarion, hollow", "division as the clarinet; judgement"),
    row("C#6", "G6", "risky", "thin, strained", "division as the clarinet; judgement"),
  ],
  piano: [row("A0", "C8", "even", "whole keyboard", OURS)],
  "double-bass": [row("E2", "G4", "even", "plucked", OURS)],
});
