import type { Context } from "tone/build/esm/core/context/Context.js";
import type { Gain } from "tone/build/esm/core/context/Gain.js";
import type { setContext } from "tone/build/esm/core/context/GlobalContext.js";
import type { connect } from "tone/build/esm/core/context/ToneAudioNode.js";

/** The parts of Tone.js that playback uses. */
export interface Tone {
  readonly Context: typeof Context;
  readonly Gain: typeof Gain;
  readonly connect: typeof connect;
  readonly setContext: typeof setContext;
}

/**
 * Loads Tone.js when sound is first asked for, so that the page's first chunk stays small. Its
 * parts are taken one by one: the front door of the package opens an audio context of its own on
 * loading, with a worker from a blob that a strict content policy forbids.
 * @returns the parts used here
 */
export async function loadTone(): Promise<Tone> {
  (globalThis as { TONE_SILENCE_LOGGING?: boolean }).TONE_SILENCE_LOGGING = true;
  const [{ Context }, { Gain }, { setContext }, { connect }] = await Promise.all([
    import("tone/build/esm/core/context/Context.js"),
    import("tone/build/esm/core/context/Gain.js"),
    import("tone/build/esm/core/context/GlobalContext.js"),
    import("tone/build/esm/core/context/ToneAudioNode.js"),
  ]);
  return { Context, Gain, connect, setContext };
}
