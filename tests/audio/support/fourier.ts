/** Power spectrum of a stretch of samples, for tests: written apart from the code under test. */
export interface Spectrum {
  /** Mean power (mean square) in each bin, from 0 Hz up; a sine of amplitude a sums to a²/2. */
  readonly power: Float64Array;
  readonly binHz: number;
}

/**
 * Spectrum through a four-term Blackman-Harris window (side lobes under −92 dB).
 * F. J. Harris, On the Use of Windows for Harmonic Analysis, 1978.
 */
export function spectrumOf(
  samples: Float32Array,
  sampleRate: number,
  from = 0,
  length = samples.length - from,
): Spectrum {
  const size = 2 ** Math.floor(Math.log2(length));
  const real = new Float64Array(size);
  let windowPower = 0;
  for (let i = 0; i < size; i++) {
    const t = (2 * Math.PI * i) / size;
    const window =
      0.35875 - 0.48829 * Math.cos(t) + 0.14128 * Math.cos(2 * t) - 0.01168 * Math.cos(3 * t);
    windowPower += window * window;
    real[i] = window * samples[from + i]!;
  }
  const [re, im] = transform(real);
  const power = new Float64Array(size / 2);
  for (let k = 0; k < size / 2; k++)
    power[k] = (2 * (re[k]! ** 2 + im[k]! ** 2)) / (windowPower * size);
  return { power, binHz: sampleRate / size };
}

/** Fast Fourier transform, decimation in frequency, natural order in and out. */
function transform(real: Float64Array): [Float64Array, Float64Array] {
  const n = real.length;
  const re = real.slice();
  const im = new Float64Array(n);
  for (let half = n / 2; half >= 1; half /= 2)
    for (let k = 0; k < half; k++) {
      const c = Math.cos((Math.PI * k) / half);
      const s = -Math.sin((Math.PI * k) / half);
      for (let a = k; a < n; a += 2 * half) {
        const b = a + half;
        const [dr, di] = [re[a]! - re[b]!, im[a]! - im[b]!];
        re[a] = re[a]! + re[b]!;
        im[a] = im[a]! + im[b]!;
        re[b] = dr * c - di * s;
        im[b] = dr * s + di * c;
      }
    }
  const bits = Math.log2(n);
  const [outRe, outIm] = [new Float64Array(n), new Float64Array(n)];
  for (let k = 0; k < n; k++) {
    let reversed = 0;
    for (let bit = 0; bit < bits; bit++) reversed |= ((k >> bit) & 1) << (bits - 1 - bit);
    outRe[reversed] = re[k]!;
    outIm[reversed] = im[k]!;
  }
  return [outRe, outIm];
}

/** Mean power between two frequencies. */
export function bandPower({ power, binHz }: Spectrum, low: number, high: number): number {
  let sum = 0;
  for (let k = Math.max(0, Math.ceil(low / binHz)); k <= high / binHz && k < power.length; k++)
    sum += power[k]!;
  return sum;
}

/** Frequency at the centre of gravity of the power between two frequencies. */
export function bandCentre({ power, binHz }: Spectrum, low: number, high: number): number {
  let sum = 0;
  let moment = 0;
  for (let k = Math.ceil(low / binHz); k <= high / binHz; k++) {
    sum += power[k]!;
    moment += k * binHz * power[k]!;
  }
  return moment / sum;
}

/** Root mean square of a stretch of samples. */
export function rms(samples: Float32Array, from = 0, to = samples.length): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += samples[i]! ** 2;
  return Math.sqrt(sum / (to - from));
}

/** Largest magnitude of a stretch of samples. */
export function peak(samples: Float32Array, from = 0, to = samples.length): number {
  let most = 0;
  for (let i = from; i < to; i++) most = Math.max(most, Math.abs(samples[i]!));
  return most;
}

export const toDb = (ratio: number): number => 20 * Math.log10(ratio);
export const powerToDb = (ratio: number): number => 10 * Math.log10(ratio);

/** A sine for tests of filters and meters. */
export function sine(
  sampleRate: number,
  seconds: number,
  hz: number,
  amplitude: number,
  phase = 0,
): Float32Array {
  const samples = new Float32Array(Math.round(seconds * sampleRate));
  for (let i = 0; i < samples.length; i++)
    samples[i] = amplitude * Math.sin((2 * Math.PI * hz * i) / sampleRate + phase);
  return samples;
}

/** Pieces one after the other. */
export function joined(...pieces: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
