import type { Count, Db, Ratio, Seconds, SoundingMidi } from "../base/index.ts";
import type { Dynamic, InstrumentId, MuteId } from "../band/index.ts";

/** Metal of the drum set that keeps time. */
export type CymbalId = "ride-cymbal" | "hi-hat";

/** A pitched sound of an instrument of the band. */
export interface PitchedSound {
  readonly kind: "pitched";
  readonly instrument: InstrumentId;
  readonly sounding: SoundingMidi;
  readonly mute: MuteId;
}

/** A stroke on a cymbal. */
export interface CymbalSound {
  readonly kind: "cymbal";
  readonly cymbal: CymbalId;
}

/** A dynamic at a time after the note's onset. */
export interface DynamicPoint {
  readonly at: Seconds;
  readonly dynamic: Dynamic;
}

/** One note of one player. */
export interface SoundEvent {
  readonly playerId: string;
  readonly sound: PitchedSound | CymbalSound;
  /** From the start of the plan to the intended onset. */
  readonly onset: Seconds;
  /** From onset to the start of the release. */
  readonly duration: Seconds;
  /** At least one point, in order of time; dynamics between two points run evenly. */
  readonly curve: readonly DynamicPoint[];
  /** Level change of this note against what the timbre says, 0 as a rule. */
  readonly trim: Db;
}

/** Where a player sits, as the listener in front of the band hears it. */
export interface StageSeat {
  readonly playerId: string;
  /** −1 the listener's far left, 0 the middle, +1 far right. */
  readonly pan: Ratio;
  /** Metres from the listener. */
  readonly distanceM: Ratio;
}

/** What to sound and when, before any sample exists. Plain data: it can be posted to a worker. */
export interface SoundPlan {
  /** In order of onset. */
  readonly events: readonly SoundEvent[];
  /** One for every player in the events. */
  readonly seats: readonly StageSeat[];
  /** Seed of the players' small differences in pitch and time. */
  readonly seed: Count;
}
