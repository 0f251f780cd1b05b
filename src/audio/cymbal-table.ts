import type { DbSpl, Hertz, Seconds } from "../base/index.ts";
import type { CymbalId } from "./sound-plan-types.ts";
import type { NoiseColour } from "./noise-colour-table.ts";

/** A cymbal as a cloud of ringing modes and a burst of noise. */
export interface CymbalRow {
  readonly modeCount: number;
  readonly lowest: Hertz;
  readonly highest: Hertz;
  /** Frequency at which the cloud is strongest; softer 6 dB an octave below, 3 dB above. */
  readonly strongest: Hertz;
  readonly lowT60: Seconds;
  readonly highT60: Seconds;
  /** Whole level of the modes at f, at 1 m. */
  readonly modesAtF: DbSpl;
  readonly noise: NoiseColour;
  readonly noiseAtF: DbSpl;
  readonly noiseT60: Seconds;
  readonly length: Seconds;
}

/**
 * Ride struck with the tip on the bow, and hi-hat closed by the foot. Mode density and decay after
 * T. D. Rossing, Science of Percussion Instruments, chapter 9, as orders of magnitude; levels are
 * a player's brush with the beat under a full band. Value from memory.
 */
export const CYMBALS: Readonly<Record<CymbalId, CymbalRow>> = Object.freeze({
  "ride-cymbal": Object.freeze({
    modeCount: 64,
    lowest: 320 as Hertz,
    highest: 13000 as Hertz,
    strongest: 3600 as Hertz,
    lowT60: 3.5 as Seconds,
    highT60: 1.2 as Seconds,
    modesAtF: 76 as DbSpl,
    noise: Object.freeze({ low: 4000 as Hertz, high: 11000 as Hertz }),
    noiseAtF: 76 as DbSpl,
    noiseT60: 0.12 as Seconds,
    length: 2.5 as Seconds,
  }),
  "hi-hat": Object.freeze({
    modeCount: 40,
    lowest: 700 as Hertz,
    highest: 14000 as Hertz,
    strongest: 6000 as Hertz,
    lowT60: 0.2 as Seconds,
    highT60: 0.12 as Seconds,
    modesAtF: 72 as DbSpl,
    noise: Object.freeze({ low: 5500 as Hertz, high: 12000 as Hertz }),
    noiseAtF: 74 as DbSpl,
    noiseT60: 0.1 as Seconds,
    length: 0.3 as Seconds,
  }),
});
