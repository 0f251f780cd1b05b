import { midiToHz } from "../base/index.ts";
import type { Cents, Ratio, Seconds } from "../base/index.ts";
import type { Articulation, Partial } from "../band/index.ts";
import { dbSplToPeak, dbToGain } from "./level-calibration.ts";
import type { NoteSpec } from "./note-spec.ts";
import type { PitchedSound } from "./sound-plan-types.ts";
import type { StruckMaterial } from "./struck-voice.ts";
import type { Mode } from "./ringing-modes.ts";

/** Rise from 10 to 90 % along half a sine takes this share of the whole rise. */
const RISE_SHARE = 0.5903;
/** Noise of hammer or finger against the whole tone rises this far over the instrument's breath. */
const STROKE_OVER_BREATH_DB = 12;
const STROKE_NOISE_T60 = 0.09;
/** After-sound of a string: this share of the amplitude rings on for three times as long. */
const AFTER_SHARE = 0.25;
const AFTER_LONGER = 3;

/**
 * A struck or plucked string ready to sound.
 * @param spec - the note
 * @param partials - partials at the stroke, Hz as the string has them (stretched or not)
 * @param options - ringing, articulation, noise, and the string's own small mistuning
 * @returns modes, noise and times for a struck voice
 * @source G. Weinreich, Coupled Piano Strings, 1977 (two-stage decay)
 */
export function stringMaterial(
  spec: NoteSpec & { readonly sound: PitchedSound },
  partials: readonly Partial[],
  options: {
    readonly articulation: Articulation;
    /** Partial n rings for the fundamental's time / (1 + damping·(n − 1)). */
    readonly damping: Ratio;
    readonly noise: Float32Array;
    readonly mistuning: Cents;
  },
): StruckMaterial {
  const { damping, articulation, noise, mistuning } = options;
  const fundamental = midiToHz(spec.sound.sounding);
  const detune = 2 ** (mistuning / 1200);
  const modes = partials.flatMap(({ hz, dbSpl }) => {
    const t60 = articulation.decaySeconds / (1 + damping * Math.max(0, hz / fundamental - 1));
    return twoStages({ hz: (hz * detune) as Mode["hz"], peak: dbSplToPeak(dbSpl), t60, phase: 0 });
  });
  const tone = Math.sqrt(modes.reduce((sum, { peak }) => sum + (peak * peak) / 2, 0));
  return {
    modes,
    noise,
    noisePeak: tone * dbToGain(articulation.noiseDb) * 10 ** (STROKE_OVER_BREATH_DB / 20),
    noiseT60: STROKE_NOISE_T60 as Seconds,
    rise: (articulation.attackSeconds / RISE_SHARE) as Seconds,
    duration: spec.duration,
    release: articulation.releaseSeconds,
  };
}

function twoStages(mode: Mode): readonly Mode[] {
  return [
    { ...mode, peak: mode.peak * (1 - AFTER_SHARE) },
    { ...mode, peak: mode.peak * AFTER_SHARE, t60: mode.t60 * AFTER_LONGER },
  ];
}
