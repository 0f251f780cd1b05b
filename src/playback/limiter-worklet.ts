import type { Hertz } from "../base/index.ts";
import { TruePeakLimiter } from "../audio/index.ts";

// The scope of an audio worklet has no types of its own in the compiler's libraries.
declare const sampleRate: number;
declare class AudioWorkletProcessor {}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor): void;

type Channels = Float32Array[];

/** The limiter of the offline render, live: the last thing before the loudspeakers. */
class LimiterProcessor extends AudioWorkletProcessor {
  private readonly limiter = new TruePeakLimiter(sampleRate as Hertz);
  private readonly silence = new Float32Array(128);

  process([input]: Channels[], [output]: Channels[]): boolean {
    const left = output?.[0];
    const right = output?.[1];
    if (!left || !right) return true;
    left.set(input?.[0] ?? this.silence.subarray(0, left.length));
    right.set(input?.[1] ?? input?.[0] ?? this.silence.subarray(0, right.length));
    this.limiter.process(left, right);
    return true;
  }
}

registerProcessor("true-peak-limiter", LimiterProcessor);
