import type { DbFs, Gain as GainFactor } from "../base/index.ts";
import { gainToDb } from "../audio/index.ts";
import limiterAddress from "./limiter-worklet.ts?worker&url";
import { FADE_SECONDS } from "./fade.ts";
import { loadTone } from "./tone-door.ts";
import type { Tone } from "./tone-door.ts";

type ToneContext = InstanceType<Tone["Context"]>;
type ToneGain = InstanceType<Tone["Gain"]>;

/** Samples that the level is read from: 43 ms at 48 kHz. */
const METER_FRAMES = 2048;

/** From volume through the limiter to the loudspeakers, with a meter at the end. */
export interface OutputChain {
  readonly tone: Tone;
  readonly context: ToneContext;
  /** Where sounds come in. */
  readonly input: ToneGain;
  /** Turns to a linear gain within a fade, without a click. */
  setVolume(gain: GainFactor): void;
  /** Peak of the last 43 ms. */
  level(): DbFs;
  dispose(): void;
}

/**
 * Builds the chain on a native context.
 * @param native - the context to play through
 * @param volume - linear gain to begin with
 * @returns the chain, once Tone.js and the limiter are loaded
 */
export async function openOutput(native: AudioContext, volume: GainFactor): Promise<OutputChain> {
  const [tone] = await Promise.all([loadTone(), native.audioWorklet.addModule(limiterAddress)]);
  // Nothing here needs the ticking clock of the library: everything is scheduled ahead.
  const context = new tone.Context({ context: native, clockSource: "offline", lookAhead: 0 });
  // Otherwise the library opens a context of its own as soon as it makes a node.
  tone.setContext(context);
  const input = new tone.Gain({ context, gain: volume });
  const limiter = new AudioWorkletNode(native, "true-peak-limiter", {
    numberOfInputs: 1,
    numberOfOutputs: 1,
    outputChannelCount: [2],
  });
  const meter = new AnalyserNode(native, { fftSize: METER_FRAMES });
  tone.connect(input, limiter);
  limiter.connect(native.destination);
  limiter.connect(meter);
  const seen = new Float32Array(METER_FRAMES);
  return {
    tone,
    context,
    input,
    setVolume: (gain) => {
      input.gain.rampTo(gain, FADE_SECONDS);
    },
    level: () => {
      meter.getFloatTimeDomainData(seen);
      const peak = seen.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
      return gainToDb(peak as GainFactor);
    },
    dispose: () => {
      input.dispose();
      limiter.disconnect();
      context.dispose();
    },
  };
}
