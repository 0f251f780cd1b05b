import { fail, ok } from "../base/index.ts";
import type { Result } from "../base/index.ts";

/** Everything live runs at this rate: what was rendered is not resampled. */
export const LIVE_SAMPLE_RATE = 48000;
/** A browser that has not started within this time is holding sound back. */
const PATIENCE_MS = 1000;
/** Where no gesture has been made at all, waiting longer changes nothing. */
const SHORT_PATIENCE_MS = 150;

/**
 * Opens the way to the loudspeakers. Call it inside the handler of a click or a key press: some
 * browsers allow sound only there, so nothing may be awaited before.
 * @returns a context, perhaps still held back
 */
export function openContext(): AudioContext {
  return new AudioContext({ sampleRate: LIVE_SAMPLE_RATE, latencyHint: "interactive" });
}

/**
 * Starts a context, or says that the browser holds it back.
 * @param context - from `openContext`
 * @returns nothing, or the problem "sound-blocked"
 */
export async function startContext(context: AudioContext): Promise<Result<void>> {
  if (context.state === "running") return ok(undefined);
  // Without permission this promise never settles, so the clock runs beside it.
  const started = context.resume().catch(() => undefined);
  const { userActivation } = navigator;
  const patience =
    userActivation && !userActivation.hasBeenActive ? SHORT_PATIENCE_MS : PATIENCE_MS;
  await Promise.race([started, new Promise((resolve) => setTimeout(resolve, patience))]);
  if ((context.state as AudioContextState) === "running") return ok(undefined);
  return fail(
    "sound-blocked",
    "The browser holds sound back until you click or press a key on this page; do that and play again.",
  );
}
