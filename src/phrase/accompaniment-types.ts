import type { Seconds, SoundingMidi } from "../base/index.ts";
import type { Dynamic } from "../band/index.ts";
import type { Divisions } from "../theory/index.ts";

/** Players beside the horns. */
export type RhythmPart = "bass" | "piano" | "drums";

/** What they sound: a pitch, or a stroke on a cymbal. */
export type RhythmSound =
  | { readonly kind: "pitched"; readonly sounding: SoundingMidi }
  | { readonly kind: "cymbal"; readonly cymbal: "ride-cymbal" | "hi-hat" };

/** A note of the rhythm section in musical time. */
export interface RhythmNote {
  readonly part: RhythmPart;
  readonly sound: RhythmSound;
  readonly onset: Divisions;
  readonly duration: Divisions;
}

/** The same as it is played. */
export interface PlayedRhythmNote {
  readonly part: RhythmPart;
  readonly sound: RhythmSound;
  readonly onset: Seconds;
  readonly duration: Seconds;
  readonly dynamic: Dynamic;
}
