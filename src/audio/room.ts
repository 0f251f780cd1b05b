import type { Hertz, Ratio, Seconds } from "../base/index.ts";
import type { Frames } from "./audio-units.ts";
import { DelayRing } from "./delay-ring.ts";
import {
  CRITICAL_DISTANCE_M,
  LEFT_REFLECTIONS,
  RIGHT_REFLECTIONS,
  TAIL_ONSET,
  TAIL_SHARE,
  TAIL_T60,
} from "./room-table.ts";
import type { Reflection } from "./room-table.ts";
import { RoomTail } from "./room-tail.ts";

/** The longest block the room takes at once. */
export const ROOM_BLOCK_FRAMES = 256;

/** Shares of a player's power that reach the listener directly and by way of the room. */
export interface RoomShares {
  readonly direct: Ratio;
  readonly room: Ratio;
}

/**
 * How a player's power divides between direct and room sound. The sum of powers is one: distance
 * makes a player roomier, not softer, so that ear and analysis weigh the players alike.
 * @param distanceM - metres from the listener
 * @returns amplitude factors of the two ways
 */
export function roomShares(distanceM: Ratio): RoomShares {
  const ratio = (distanceM / CRITICAL_DISTANCE_M) ** 2;
  return { direct: Math.sqrt(1 / (1 + ratio)), room: Math.sqrt(ratio / (1 + ratio)) };
}

/** A small room: ten first reflections and a short tail, the same in every engine. */
export class Room {
  private readonly leftIn: DelayRing;
  private readonly rightIn: DelayRing;
  private readonly tail: RoomTail;
  private readonly leftTaps: readonly Tap[];
  private readonly rightTaps: readonly Tap[];
  private readonly tailOnset: Frames;
  private readonly left = new Float32Array(ROOM_BLOCK_FRAMES);
  private readonly right = new Float32Array(ROOM_BLOCK_FRAMES);

  /** @param sampleRate - Hz */
  constructor(sampleRate: Hertz) {
    const longest = Math.ceil(0.03 * sampleRate) + ROOM_BLOCK_FRAMES;
    this.leftIn = new DelayRing(longest);
    this.rightIn = new DelayRing(longest);
    this.tailOnset = Math.round(TAIL_ONSET * sampleRate);
    const scale = Math.sqrt(1 / (1 + TAIL_SHARE) / (reflectedPower() / 2));
    this.leftTaps = tapsOf(LEFT_REFLECTIONS, sampleRate, scale);
    this.rightTaps = tapsOf(RIGHT_REFLECTIONS, sampleRate, scale);
    this.tail = new RoomTail(sampleRate, Math.sqrt(TAIL_SHARE / (1 + TAIL_SHARE)) as Ratio);
  }

  /** Time until an impulse has died away by 60 dB. */
  static get length(): Seconds {
    return (TAIL_T60 + TAIL_ONSET + 0.03) as Seconds;
  }

  /**
   * Adds the room's answer to what is sent into it.
   * @param send - the two sends, read from their start
   * @param out - the two channels added to
   * @param from - first index in `out`
   * @param frames - how many, at most ROOM_BLOCK_FRAMES
   */
  addTo(
    send: readonly [Float32Array, Float32Array],
    out: readonly [Float32Array, Float32Array],
    from: Frames,
    frames: Frames,
  ): void {
    this.leftIn.write(send[0], 0, frames);
    this.rightIn.write(send[1], 0, frames);
    this.addTaps(this.leftTaps, out[0], from, frames);
    this.addTaps(this.rightTaps, out[1], from, frames);
    this.left.fill(0);
    this.right.fill(0);
    this.leftIn.addDelayed(this.left, 0, frames, this.tailOnset, 1);
    this.rightIn.addDelayed(this.right, 0, frames, this.tailOnset, 1);
    this.tail.addTo([this.left, this.right], out, from, frames);
  }

  private addTaps(taps: readonly Tap[], out: Float32Array, from: Frames, frames: Frames): void {
    for (const { delay, gain, isLeft } of taps)
      (isLeft ? this.leftIn : this.rightIn).addDelayed(out, from, frames, delay, gain);
  }
}

interface Tap {
  readonly delay: Frames;
  readonly gain: number;
  readonly isLeft: boolean;
}

function tapsOf(
  reflections: readonly Reflection[],
  sampleRate: Hertz,
  scale: number,
): readonly Tap[] {
  return reflections.map(({ delay, gain, from }) => ({
    delay: Math.round(delay * sampleRate),
    gain: gain * scale,
    isLeft: from === "left",
  }));
}

/** Power of all reflections of an even pair of sends. */
function reflectedPower(): number {
  const power = (sum: number, { gain }: Reflection): number => sum + gain * gain;
  return LEFT_REFLECTIONS.reduce(power, 0) + RIGHT_REFLECTIONS.reduce(power, 0);
}
