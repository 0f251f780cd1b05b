/**
 * How notes begin, sway, breathe and end.
 *
 * Attack, 10 to 90 % of the sustained level, in milliseconds at pp, mf, f and ff. Source: own
 * analysis of an open set of orchestral samples by dynamic for trombone (72, 40, 35, 28 in the
 * middle register), horn (140 at p, 158 at mf, 80 at ff), saxophone (20 to 5, where 15 and less only
 * means "at the resolution"), clarinets and flute, smoothed so that louder is never slower; ranges
 * from memory for the others: trumpet 20-40, flugelhorn 30-50, bass trombone 40-80, tuba 60-130,
 * piano 3-10, plucked bass 5-15.
 * Vibrato: trombone 4.45 Hz ±24 cents, measured in the same set; flute 5.5 to 7 Hz (Garrison,
 * British Flute Society handout 2012); trumpet 5 to 6 Hz ±15-30 cents, saxophones 4.5 to 6 Hz
 * ±20-60 cents, setting in after 300 to 600 ms, clarinets and horn none: values from memory.
 * Release, noise and decay: judgement.
 */
import type { InstrumentId } from "./band-types.ts";

/** One instrument's way of speaking. */
export interface ArticulationRow {
  /** Milliseconds at pp, mf, f, ff in the middle register. */
  readonly attackMs: readonly [pp: number, mf: number, f: number, ff: number];
  /** Sounding MIDI note that the attack belongs to; lower notes speak a little later. */
  readonly middle: number;
  readonly releaseMs: number;
  readonly vibratoHz: number;
  readonly vibratoCents: number;
  readonly vibratoDelayMs: number;
  /** dB against the tone at pp and at ff. */
  readonly noiseDb: readonly [pp: number, ff: number];
  /** Seconds to fall by 60 dB at two sounding MIDI notes; none for blown notes. */
  readonly decay?: readonly (readonly [midi: number, seconds: number])[];
  readonly source: string;
}

const MEASURED = "attack measured";
const MEMORY = "value from memory";

/** Ways of speaking by instrument. */
export const articulationTable: Readonly<Record<InstrumentId, ArticulationRow>> = Object.freeze({
  trumpet: {
    attackMs: [40, 30, 25, 20],
    middle: 69,
    releaseMs: 70,
    vibratoHz: 5.5,
    vibratoCents: 20,
    vibratoDelayMs: 400,
    noiseDb: [-45, -58],
    source: MEMORY,
  },
  flugelhorn: {
    attackMs: [50, 42, 36, 30],
    middle: 67,
    releaseMs: 80,
    vibratoHz: 5.2,
    vibratoCents: 18,
    vibratoDelayMs: 400,
    noiseDb: [-42, -55],
    source: MEMORY,
  },
  trombone: {
    attackMs: [72, 42, 35, 27],
    middle: 57,
    releaseMs: 80,
    vibratoHz: 4.45,
    vibratoCents: 24,
    vibratoDelayMs: 400,
    noiseDb: [-45, -58],
    source: `${MEASURED}, vibrato measured`,
  },
  "bass-trombone": {
    attackMs: [80, 62, 50, 40],
    middle: 48,
    releaseMs: 90,
    vibratoHz: 4.4,
    vibratoCents: 10,
    vibratoDelayMs: 600,
    noiseDb: [-45, -57],
    source: MEMORY,
  },
  horn: {
    attackMs: [155, 150, 115, 80],
    middle: 56,
    releaseMs: 110,
    vibratoHz: 0,
    vibratoCents: 0,
    vibratoDelayMs: 0,
    noiseDb: [-48, -60],
    source: MEASURED,
  },
  tuba: {
    attackMs: [130, 100, 80, 60],
    middle: 43,
    releaseMs: 120,
    vibratoHz: 0,
    vibratoCents: 0,
    vibratoDelayMs: 0,
    noiseDb: [-45, -58],
    source: MEMORY,
  },
  "soprano-sax": {
    attackMs: [18, 14, 11, 9],
    middle: 72,
    releaseMs: 60,
    vibratoHz: 5.2,
    vibratoCents: 25,
    vibratoDelayMs: 350,
    noiseDb: [-35, -48],
    source: `${MEASURED} on one saxophone`,
  },
  "alto-sax": {
    attackMs: [20, 15, 12, 10],
    middle: 65,
    releaseMs: 60,
    vibratoHz: 5,
    vibratoCents: 25,
    vibratoDelayMs: 350,
    noiseDb: [-35, -48],
    source: `${MEASURED} on one saxophone`,
  },
  "tenor-sax": {
    attackMs: [24, 18, 14, 12],
    middle: 60,
    releaseMs: 70,
    vibratoHz: 4.8,
    vibratoCents: 25,
    vibratoDelayMs: 400,
    noiseDb: [-33, -47],
    source: "as the alto, a little later: judgement",
  },
  "baritone-sax": {
    attackMs: [30, 22, 17, 14],
    middle: 52,
    releaseMs: 80,
    vibratoHz: 4.6,
    vibratoCents: 18,
    vibratoDelayMs: 500,
    noiseDb: [-33, -47],
    source: "as the alto, later: judgement",
  },
  flute: {
    attackMs: [95, 85, 72, 60],
    middle: 76,
    releaseMs: 80,
    vibratoHz: 6,
    vibratoCents: 15,
    vibratoDelayMs: 300,
    noiseDb: [-28, -38],
    source: `${MEASURED}; rate published, extent judgement`,
  },
  clarinet: {
    attackMs: [70, 45, 28, 25],
    middle: 66,
    releaseMs: 60,
    vibratoHz: 0,
    vibratoCents: 0,
    vibratoDelayMs: 0,
    noiseDb: [-45, -55],
    source: MEASURED,
  },
  "bass-clarinet": {
    attackMs: [75, 60, 50, 40],
    middle: 47,
    releaseMs: 70,
    vibratoHz: 0,
    vibratoCents: 0,
    vibratoDelayMs: 0,
    noiseDb: [-43, -54],
    source: MEASURED,
  },
  piano: {
    attackMs: [10, 7, 5, 3],
    middle: 60,
    releaseMs: 150,
    vibratoHz: 0,
    vibratoCents: 0,
    vibratoDelayMs: 0,
    noiseDb: [-50, -45],
    decay: [
      [21, 18],
      [108, 1],
    ],
    source: MEMORY,
  },
  "double-bass": {
    attackMs: [15, 11, 8, 5],
    middle: 40,
    releaseMs: 150,
    vibratoHz: 0,
    vibratoCents: 0,
    vibratoDelayMs: 0,
    noiseDb: [-40, -38],
    decay: [
      [28, 5],
      [55, 2.5],
    ],
    source: MEMORY,
  },
} satisfies Record<InstrumentId, ArticulationRow>);
