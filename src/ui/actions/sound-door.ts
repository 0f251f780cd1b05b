import type { Db } from "../../base/index.ts";
import { levelMatchGain, type SoundPlan } from "../../audio/index.ts";
import type { EndReason, Playback } from "../../playback/index.ts";

let loading: Promise<Playback> | undefined;
const overListeners = new Set<(reason: EndReason) => void>();
const gains = new Map<string, Db>();

/**
 * The page's one player, loaded when it is first asked for.
 * @returns the player
 */
export function playback(): Promise<Playback> {
  loading ??= import("../../playback/index.ts").then(({ createPlayback }) => {
    const player = createPlayback();
    player.onEnd((reason) => {
      if (reason !== "replaced") overListeners.forEach((tell) => tell(reason));
    });
    return player;
  });
  return loading;
}

/** Loads the sound ahead of the first press, so that it starts at once. */
export function warmSound(): void {
  void playback().then((player) => player.warmUp());
}

/** Silence, where a player was loaded at all. */
export function stopPlayback(): void {
  void loading?.then((player) => player.stop());
}

/** Hears of every sound that is over and not replaced by another. */
export function onSoundOver(listener: (reason: EndReason) => void): void {
  overListeners.add(listener);
}

/**
 * The level change that makes a voicing as loud as all others; measured once a sound.
 * @param plan - sustained for three seconds
 * @returns dB; 0 where it cannot be measured
 */
export async function matchedGain(plan: SoundPlan): Promise<Db> {
  const key = JSON.stringify([plan.events, plan.seats]);
  const known = gains.get(key);
  if (known !== undefined) return known;
  const player = await playback();
  if (!player.isSounding()) {
    // Opens the output inside the press that asked for it; measuring takes a moment.
    const nothing = new Float32Array(1);
    void player.play({ kind: "samples", samples: { left: nothing, right: nothing } });
  }
  const measured = await player.measure(plan);
  const gain = measured.ok ? levelMatchGain(measured.value) : (0 as Db);
  gains.set(key, gain);
  return gain;
}
