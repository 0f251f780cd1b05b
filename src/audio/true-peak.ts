import type { Count, Ratio } from "../base/index.ts";
import type { DbTp, Frames } from "./audio-units.ts";

/** Taps each side of the point where the signal is rebuilt. */
export const PEAK_HALF_TAPS: Frames = 6;
const TAPS = 2 * PEAK_HALF_TAPS;
/** Shape of the Kaiser window: ripple well under 0.1 dB in the band that matters. */
const KAISER_BETA = 5.5;

/**
 * Three filters that give the signal at one, two and three quarters of the way from one sample to
 * the next: 4 × oversampling, the first phase being the samples themselves. The tap at index t
 * belongs to the sample t − PEAK_HALF_TAPS + 1 after the earlier of the two.
 * @source ITU-R BS.1770-5, annex 2 (4 × oversampling); Kaiser-windowed sinc, own design
 */
export const QUARTER_FILTERS: readonly Float64Array[] = Object.freeze(
  [0.25, 0.5, 0.75].map((shift) => {
    const taps = Float64Array.from({ length: TAPS }, (_, t) => {
      const x = t - PEAK_HALF_TAPS + 1 - shift;
      return (Math.sin(Math.PI * x) / (Math.PI * x)) * kaiser(x / PEAK_HALF_TAPS);
    });
    const sum = taps.reduce((total, tap) => total + tap, 0);
    return taps.map((tap) => tap / sum);
  }),
);

/**
 * The first and third filters mirror each other and the second is its own mirror image, so sums and
 * differences of two samples that mirror each other need half the products.
 */
const FOLDED = foldedFilters(QUARTER_FILTERS);

function foldedFilters([first, second]: readonly Float64Array[]): readonly [
  outer: Float64Array,
  tilt: Float64Array,
  middle: Float64Array,
] {
  const folded = (tap: (t: number) => number): Float64Array =>
    Float64Array.from({ length: PEAK_HALF_TAPS }, (_, t) => tap(t));
  const mirror = (t: number): number => first![TAPS - 1 - t]!;
  return [
    folded((t) => 0.5 * (first![t]! + mirror(t))),
    folded((t) => 0.5 * (first![t]! - mirror(t))),
    folded((t) => second![t]!),
  ];
}

/** No rebuilt value can exceed the largest sample by more than this factor. */
export const LARGEST_OVERSHOOT: Ratio = Math.max(
  ...QUARTER_FILTERS.map((taps) => taps.reduce((sum, tap) => sum + Math.abs(tap), 0)),
);

function kaiser(x: number): number {
  return bessel(KAISER_BETA * Math.sqrt(Math.max(0, 1 - x * x))) / bessel(KAISER_BETA);
}

/** Modified Bessel function of the first kind, order 0, by its power series. */
function bessel(x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; k < 30; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}

/**
 * Largest magnitude between one sample and the next, the first included.
 * @param samples - at least PEAK_HALF_TAPS − 1 samples before `at` and PEAK_HALF_TAPS after it
 * @param at - index of the earlier sample
 * @returns magnitude, digital units
 */
export function peakAfter(samples: Float32Array, at: Frames): Ratio {
  const [outer, tilt, middle] = FOLDED;
  const from = at - PEAK_HALF_TAPS + 1;
  const end = at + PEAK_HALF_TAPS;
  let common = 0;
  let apart = 0;
  let half = 0;
  for (let t = 0; t < PEAK_HALF_TAPS; t++) {
    const early = samples[from + t]!;
    const late = samples[end - t]!;
    common += outer[t]! * (early + late);
    apart += tilt[t]! * (early - late);
    half += middle[t]! * (early + late);
  }
  // The larger of |common + apart| and |common − apart|: one and three quarters of the way.
  const quarters = Math.abs(common) + Math.abs(apart);
  return Math.max(Math.abs(samples[at]!), Math.abs(half), quarters);
}

/**
 * True peak of a whole recording: the largest magnitude of the continuous signal.
 * @param channels - one array a channel
 * @returns level re full scale; minus infinity for silence
 * @source ITU-R BS.1770-5, annex 2
 */
export function truePeak(channels: readonly Float32Array[]): DbTp {
  return (20 * Math.log10(Math.max(0, ...channels.map(channelPeak)))) as DbTp;
}

function channelPeak(samples: Float32Array): number {
  const padded = new Float32Array(samples.length + 2 * TAPS);
  padded.set(samples, TAPS);
  const loudest = largest(padded, 0, padded.length);
  let peak = loudest;
  for (let at = PEAK_HALF_TAPS; at < padded.length - TAPS; at++) {
    // Only near large samples can a larger peak lie: skip stretches that cannot reach it.
    if (reach(padded, at) * LARGEST_OVERSHOOT > peak) peak = Math.max(peak, peakAfter(padded, at));
  }
  return peak;
}

function reach(samples: Float32Array, at: Frames): number {
  return largest(samples, at - PEAK_HALF_TAPS + 1, at + PEAK_HALF_TAPS + 1);
}

/**
 * Largest magnitude in a stretch of samples.
 * @param samples - the samples
 * @param from - first index
 * @param to - index after the last
 * @returns 0 or more
 */
export function largest(samples: Float32Array, from: Count, to: Count): Ratio {
  let most = 0;
  for (let i = from; i < to; i++) {
    const size = Math.abs(samples[i]!);
    if (size > most) most = size;
  }
  return most;
}
