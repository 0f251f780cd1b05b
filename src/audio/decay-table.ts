import type { Seconds, SoundingMidi } from "../base/index.ts";

/** How long the fundamental of a struck or plucked string rings at a pitch. */
export interface DecayRow {
  readonly sounding: SoundingMidi;
  /** Time to fall by 60 dB. */
  readonly t60: Seconds;
}

/** Ringing of one instrument. */
export interface Decay {
  /** In order of pitch; between two rows the logarithm of the time runs evenly. */
  readonly rows: readonly DecayRow[];
  /** Partial n rings for t60 / (1 + damping·(n − 1)). */
  readonly damping: number;
}

const row = (sounding: number, t60: number): DecayRow =>
  Object.freeze({ sounding: sounding as SoundingMidi, t60: t60 as Seconds });

/**
 * Piano: order of magnitude after N. H. Fletcher and T. D. Rossing, The Physics of Musical
 * Instruments, chapter 12 (bass strings ring over ten seconds, the top under one); value from
 * memory.
 */
export const PIANO_DECAY: Decay = Object.freeze({
  rows: Object.freeze([
    row(21, 15),
    row(45, 11),
    row(60, 7),
    row(72, 4),
    row(84, 2),
    row(108, 0.5),
  ]),
  damping: 0.15,
});

/** Plucked double bass: engineering figures, value from memory. */
export const DOUBLE_BASS_DECAY: Decay = Object.freeze({
  rows: Object.freeze([row(28, 4), row(40, 3), row(55, 1.6), row(67, 1)]),
  damping: 0.35,
});
