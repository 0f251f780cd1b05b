import type { Count, Quantity } from "../base/index.ts";

/** Loudness of a programme, K-weighted, re full scale (ITU-R BS.1770; 1 LU = 1 dB). */
export type Lufs = Quantity<"LUFS">;
/** Peak of the continuous signal between the samples too, re full scale (ITU-R BS.1770). */
export type DbTp = Quantity<"dBTP">;
/** Length or position in sample frames; one frame holds one sample of each channel. */
export type Frames = Count;

/** Two channels of equal length, samples in digital units: full scale is ±1. */
export interface StereoSamples {
  readonly left: Float32Array;
  readonly right: Float32Array;
}
