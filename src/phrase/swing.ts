import { quantity, type Ratio, type Seconds } from "../base/index.ts";
import {
  beatLength,
  type Divisions,
  type Melody,
  type MelodyStyle,
  type MelodyTime,
  type QuartersPerMinute,
} from "../theory/index.ts";
import { swingTable } from "./swing-table.ts";

/**
 * How much longer a drummer's first eighth on the ride cymbal is than the second: the second keeps
 * about 100 ms, so the ratio falls as the tempo rises.
 * @param tempo - quarter notes a minute
 * @returns long to short, 1 (even) to 3.5
 * @source A. Friberg & A. Sundström, Swing ratios and ensemble timing in jazz performance, Music
 *   Perception 19(3), 2002 (short note about 100 ms, up to 3.5 when slow, even when fast)
 * @example rideSwingRatio(200) // 2
 */
export function rideSwingRatio(tempo: QuartersPerMinute): Ratio {
  const { shortSeconds, least, most } = swingTable;
  const ratio = (60 / tempo - shortSeconds) / shortSeconds;
  return Math.min(most, Math.max(least, Math.round(ratio * 1e6) / 1e6));
}

/**
 * The same for horns, who swing less than the cymbal.
 * @param tempo - quarter notes a minute
 * @returns long to short, 1 to 2.25
 * @source soloists' ratio is smaller than the cymbal's: Friberg & Sundström 2002; half of what the
 *   cymbal has beyond even: value from memory, a proposal
 * @example hornSwingRatio(200) // 1.5
 */
export function hornSwingRatio(tempo: QuartersPerMinute): Ratio {
  return 1 + swingTable.hornShare * (rideSwingRatio(tempo) - 1);
}

/** How a style is played. Ratios are long to short eighth. */
export interface Feel {
  readonly ride: Ratio;
  readonly horns: Ratio;
  /** Horns come late on the beat, so that their upbeats meet the cymbal's. */
  readonly isLaidBack: boolean;
}

/**
 * The usual feel of a style at a tempo.
 * @param style - the style
 * @param tempo - quarter notes a minute
 * @returns even eighths for all but swing
 * @source swing-table.ts
 */
export function feelOf(style: MelodyStyle, tempo: QuartersPerMinute): Feel {
  if (style !== "swing") return { ride: 1, horns: 1, isLaidBack: false };
  return { ride: rideSwingRatio(tempo), horns: hornSwingRatio(tempo), isLaidBack: true };
}

/** Musical time to seconds, for the rhythm section and for horns. */
export interface Clock {
  /**
   * @param at - divisions from the start
   * @param isEven - true inside a beat that is cut into triplets or sixteenths and does not swing
   */
  rhythm(at: Divisions, isEven?: boolean): Seconds;
  horns(at: Divisions, isEven?: boolean): Seconds;
}

/**
 * The note value whose halves swing: the quarter in metres of quarters and halves.
 * @param melody - metre and division
 * @returns divisions; the beat where nothing swings (metres of eighths)
 */
export function pulseOf(melody: MelodyTime): Divisions {
  return melody.metre.beatType <= 4 ? quantity<Divisions>(melody.division) : beatLength(melody);
}

/**
 * Makes the clock of a melody. In a quarter that swings, time runs in two straight lines that meet at
 * the upbeat; metres of eighths are even. Laid-back horns place upbeats with the cymbal and beats late
 * by what their smaller ratio leaves: 33 ms at 150, less when faster, nothing from 300 on.
 * @param melody - tempo, division, metre, pickup
 * @param feel - ratios
 * @returns the clock
 * @source late on the beat, together on the upbeat: Friberg & Sundström 2002; about 30 ms near 150,
 *   falling with tempo: C. Nelias et al., Downbeat delays are a key component of swing in jazz, 2022
 */
export function clockOf(melody: MelodyTime & Pick<Melody, "tempo">, feel: Feel): Clock {
  const pulse = pulseOf(melody);
  const pulseSeconds = ((pulse / melody.division) * 60) / melody.tempo;
  const swings = melody.metre.beatType <= 4;
  const longOf = (ratio: Ratio): number => (swings ? ratio / (1 + ratio) : 0.5);
  const delay = feel.isLaidBack ? longOf(feel.ride) - longOf(feel.horns) : 0;
  // Pulses are counted from bar 1, so that a pickup of any length lies right.
  const first = Math.ceil(melody.pickup / pulse) * pulse;
  const place = (at: Divisions, long: number, late: number, isEven: boolean): Seconds => {
    const position = at - melody.pickup + first;
    const whole = Math.floor(position / pulse);
    const part = position / pulse - whole;
    const middle = late + (isEven ? 0.5 : long);
    const within =
      part <= 0.5
        ? late + (middle - late) * 2 * part
        : middle + (1 + late - middle) * (2 * part - 1);
    const start = (first - melody.pickup) / pulse;
    return quantity<Seconds>((whole + within - start) * pulseSeconds);
  };
  return {
    rhythm: (at, isEven = false) => place(at, longOf(feel.ride), 0, isEven),
    horns: (at, isEven = false) => place(at, longOf(feel.horns), delay, isEven),
  };
}
