import type { Db, Seconds, SoundingMidi } from "../base/index.ts";
import type { PitchedSound, SoundPlan } from "../audio/index.ts";

const INSTRUMENTS: readonly PitchedSound["instrument"][] = [
  "trumpet",
  "trombone",
  "bass-trombone",
  "alto-sax",
  "tenor-sax",
  "baritone-sax",
];

/**
 * A moment of every horn of a big band, never heard: rendering it makes the breath of each and lets
 * the engine compile the inner loops, so that the first real sound starts as fast as the second.
 */
export const WARM_UP_PLAN: SoundPlan = {
  events: INSTRUMENTS.map((instrument) => ({
    playerId: instrument,
    sound: { kind: "pitched", instrument, sounding: 55 as SoundingMidi, mute: "open" },
    onset: 0 as Seconds,
    duration: 0.5 as Seconds,
    curve: [{ at: 0 as Seconds, dynamic: "mf" }],
    trim: 0 as Db,
  })),
  seats: [],
  seed: 1,
};
