import { quantity, type Count, type Db, type Seconds } from "../base/index.ts";
import type { Dynamic } from "../band/index.ts";
import { barLength, beatLength, type Divisions, type Melody } from "../theory/index.ts";
import { amplifiedDb } from "./amplified-table.ts";
import type { SoundEvent } from "./sound-plan-types.ts";

/** Length of a stroke that counts. */
const STROKE_SECONDS = 0.1 as Seconds;
/** Below this tempo one bar is enough to feel the time. Source: judgement. */
const SLOW_QUARTERS = 100;

/** Strokes before the music and how long they take. */
export interface CountIn {
  readonly strokes: readonly SoundEvent[];
  /** From the first stroke to the music. */
  readonly seconds: Seconds;
}

/**
 * How many bars a leader counts.
 * @param melody - tempo
 * @returns two, or one where it is slow
 * @source common practice, no single source
 */
export function usualCountIn({ tempo }: Pick<Melody, "tempo">): Count {
  return tempo < SLOW_QUARTERS ? 1 : 2;
}

/**
 * The beats before a piece of music, on the cymbals: the first of each bar louder. What begins in the
 * middle of a bar, a pickup too, takes the place of the last beats.
 * @param melody - metre, division, tempo, pickup
 * @param from - where the music begins
 * @param bars - bars counted, 0 for none
 * @param dynamic - dynamic of the strokes
 * @returns strokes from 0 seconds on, on the drummer's seat
 */
export function countIn(melody: Melody, from: Divisions, bars: Count, dynamic: Dynamic): CountIn {
  const bar = barLength(melody);
  const beat = beatLength(melody);
  const into = (((from - melody.pickup) % bar) + bar) % bar;
  const length = bars * bar - (into === 0 ? 0 : bar - into);
  if (bars <= 0 || length <= 0) return { strokes: [], seconds: 0 as Seconds };
  const secondsOf = (divisions: number): Seconds =>
    quantity<Seconds>(((divisions / melody.division) * 60) / melody.tempo);
  const strokes: SoundEvent[] = [];
  for (let at = 0; at < length; at += beat) {
    const isFirst = at % bar === 0;
    strokes.push({
      playerId: "drums",
      sound: { kind: "cymbal", cymbal: "hi-hat" },
      onset: secondsOf(at),
      duration: STROKE_SECONDS,
      curve: [{ at: 0 as Seconds, dynamic }],
      trim: quantity<Db>(amplifiedDb.drums + (isFirst ? 4 : 0)),
    });
  }
  return { strokes, seconds: secondsOf(length) };
}
