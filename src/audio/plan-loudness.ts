import type { Lufs } from "./audio-units.ts";
import { integratedLoudness } from "./loudness-meter.ts";
import type { NoteMaker } from "./note-maker.ts";
import { renderPlan } from "./render-plan.ts";
import type { SoundPlan } from "./sound-plan-types.ts";

/**
 * How loud a plan is as played, before the limiter: what level-matching starts from.
 * @param plan - for comparing voicings, each sustained for three seconds
 * @param maker - makes the notes
 * @returns integrated loudness; minus infinity when nothing sounds
 * @source ITU-R BS.1770-5, annex 1
 */
export function planLoudness(plan: SoundPlan, maker: NoteMaker): Lufs {
  const { left, right } = renderPlan(plan, { maker, isLimited: false });
  return integratedLoudness([left, right], maker.sampleRate);
}
