import type { Count, Seconds } from "../base/index.ts";
import type { CymbalSound, DynamicPoint, PitchedSound } from "./sound-plan-types.ts";
import { positionOf } from "./dynamic-steps.ts";
import type { DynamicPosition } from "./dynamic-steps.ts";

/** Everything that decides the samples of one dry note, wherever and whenever it is heard. */
export interface NoteSpec {
  readonly sound: PitchedSound | CymbalSound;
  readonly duration: Seconds;
  readonly curve: readonly DynamicPoint[];
  /** Seed of this player's pitch, vibrato and noise. */
  readonly seed: Count;
}

/**
 * A text that is equal for two notes exactly when their samples are.
 * @param spec - the note
 * @returns key for a cache
 */
export function noteKey(spec: NoteSpec): string {
  const { sound } = spec;
  const what =
    sound.kind === "cymbal" ? sound.cymbal : `${sound.instrument} ${sound.sounding} ${sound.mute}`;
  const curve = spec.curve.map(({ at, dynamic }) => `${at}${dynamic}`).join(" ");
  return `${what}|${spec.duration}|${curve}|${spec.seed}`;
}

/**
 * Dynamic of a note at a time, evenly between the points of its curve.
 * @param curve - at least one point, in order of time
 * @param time - seconds after the onset
 * @returns place on the row of dynamics
 */
export function dynamicOnCurve(curve: readonly DynamicPoint[], time: Seconds): DynamicPosition {
  let before = curve[0]!;
  for (const point of curve) {
    if (point.at > time) {
      if (point === before) break;
      const share = (time - before.at) / (point.at - before.at);
      const from = positionOf(before.dynamic);
      return (from + share * (positionOf(point.dynamic) - from)) as DynamicPosition;
    }
    before = point;
  }
  return positionOf(before.dynamic);
}
