/**
 * What mutes do to a spectrum: how much softer the note is as a whole, and the shape, in dB by
 * frequency, for a trumpet; larger instruments read it at a stretched frequency. The shape is
 * applied first and the note then set to its level.
 *
 * Sources: order of brightness (Harmon without stem, straight, open, cup) read on a trumpet timbre
 * page; cup cuts highs and lows (seller's guide); Harmon nearly closes the bell and buzzes (Campbell,
 * Gilbert and Myers, Acoustics Today 17(2), 2021). Insertion losses and corner frequencies: straight
 * high-pass near 1.6 kHz, cup band-pass 800 to 1200 Hz, Harmon resonance 1.5 to 2 kHz, bucket
 * low-pass from 1 to 1.5 kHz, plunger formant between 500 and 1500 Hz: values from memory, a model
 * and not a measurement. Harmon shape below 1.5 kHz and above 3 kHz, and the horn's mute, after SHARC
 * muted-minus-open curves (the mute is not named there; the trumpet's high end is softened).
 */
import type { InstrumentId, MuteId } from "./band-types.ts";

type Points = readonly (readonly [hz: number, db: number])[];

/** One mute's change of level and spectrum. */
export interface MuteCurveRow {
  readonly insertionDb: number;
  readonly points: Points;
  readonly source: string;
}

/** Shapes for a trumpet. */
export const muteCurveTable: Readonly<Record<Exclude<MuteId, "open">, MuteCurveRow>> =
  Object.freeze({
    cup: {
      insertionDb: -10,
      points: [
        [250, -8],
        [600, -2],
        [1000, 0],
        [1500, -4],
        [2500, -10],
        [4000, -16],
        [8000, -24],
      ],
      source: "value from memory",
    },
    straight: {
      insertionDb: -7,
      points: [
        [200, -16],
        [500, -10],
        [1000, -4],
        [1700, 0],
        [3000, 2],
        [5000, 3],
        [8000, 3],
      ],
      source: "value from memory",
    },
    harmon: {
      insertionDb: -17,
      points: [
        [250, -10],
        [500, -5],
        [1000, -14],
        [1250, -16],
        [1750, -1],
        [2500, 0],
        [3150, 2],
        [5000, 9],
        [8000, 18],
      ],
      source: "SHARC difference, resonance from memory",
    },
    plunger: {
      insertionDb: -6,
      points: [
        [200, -10],
        [500, -3],
        [900, 0],
        [1500, -4],
        [3000, -10],
        [6000, -14],
      ],
      source: "value from memory",
    },
    bucket: {
      insertionDb: -6,
      points: [
        [400, 0],
        [1200, 0],
        [2000, -5],
        [4000, -12],
        [8000, -20],
      ],
      source: "value from memory",
    },
  });

/** A horn's straight mute. */
export const hornMutePoints: Points = Object.freeze([
  [250, -8],
  [500, -6],
  [1000, 6],
  [1600, 13],
  [2500, 20],
  [4000, 20],
] as const);

/**
 * Stretch of the trumpet's shapes: 0.55 means that a feature at 1000 Hz lies at 550 Hz. Trombone
 * from the high-pass of its straight mute (0.8 to 1 kHz, from memory), the others judgement.
 * Source: value from memory.
 */
export const muteStretch: Readonly<Partial<Record<InstrumentId, number>>> = Object.freeze({
  trumpet: 1,
  flugelhorn: 0.9,
  trombone: 0.55,
  "bass-trombone": 0.5,
  horn: 1,
  tuba: 0.3,
});
