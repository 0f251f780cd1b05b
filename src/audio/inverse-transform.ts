import type { Count } from "../base/index.ts";

/**
 * Sums a set of harmonic sines into one period by an inverse fast Fourier transform.
 * @param size - samples in the period, a power of two
 * @param amplitudes - peak amplitude of harmonic k at index k, index 0 unused; shorter than size/2
 * @param phases - phase of each harmonic in radians, same length
 * @returns `size` samples of Σ amplitude·sin(2πk·i/size + phase)
 * @throws RangeError when the size is no power of two or the harmonics do not fit
 * @source J. W. Cooley and J. W. Tukey, An Algorithm for the Machine Calculation of Complex
 * Fourier Series, 1965 (radix 2, decimation in time)
 */
export function sumOfHarmonics(
  size: Count,
  amplitudes: Float64Array,
  phases: Float64Array,
): Float64Array {
  if (size < 2 || (size & (size - 1)) !== 0)
    throw new RangeError(`period length must be a power of two, got ${size}`);
  if (amplitudes.length > size / 2)
    throw new RangeError(`at most ${size / 2 - 1} harmonics fit, got ${amplitudes.length - 1}`);
  const real = new Float64Array(size);
  const imaginary = new Float64Array(size);
  // a·sin(x + p) is the real part of a·e^{i(x + p - π/2)}
  for (let k = 1; k < amplitudes.length; k++) {
    const at = bitReversed(k, size);
    real[at] = amplitudes[k]! * Math.sin(phases[k]!);
    imaginary[at] = -amplitudes[k]! * Math.cos(phases[k]!);
  }
  butterflies(real, imaginary);
  return real;
}

function bitReversed(index: number, size: number): number {
  let reversed = 0;
  for (let bit = 1, rest = index; bit < size; bit <<= 1, rest >>= 1)
    reversed = (reversed << 1) | (rest & 1);
  return reversed;
}

function butterflies(outReal: Float64Array, outImaginary: Float64Array): void {
  const size = outReal.length;
  for (let half = 1; half < size; half <<= 1) {
    const stepReal = Math.cos(Math.PI / half);
    const stepImaginary = Math.sin(Math.PI / half);
    const turnReal = new Float64Array(half);
    const turnImaginary = new Float64Array(half);
    turnReal[0] = 1;
    for (let k = 1; k < half; k++) {
      // Fresh sines every 16 steps keep the recursion's rounding below 1e-14.
      const isFresh = (k & 15) === 0;
      const r = turnReal[k - 1]!;
      const i = turnImaginary[k - 1]!;
      turnReal[k] = isFresh ? Math.cos((Math.PI * k) / half) : r * stepReal - i * stepImaginary;
      turnImaginary[k] = isFresh
        ? Math.sin((Math.PI * k) / half)
        : r * stepImaginary + i * stepReal;
    }
    for (let from = 0; from < size; from += 2 * half) {
      for (let k = 0; k < half; k++) {
        const low = from + k;
        const high = low + half;
        const r = outReal[high]! * turnReal[k]! - outImaginary[high]! * turnImaginary[k]!;
        const i = outReal[high]! * turnImaginary[k]! + outImaginary[high]! * turnReal[k]!;
        outReal[high] = outReal[low]! - r;
        outImaginary[high] = outImaginary[low]! - i;
        outReal[low] = outReal[low]! + r;
        outImaginary[low] = outImaginary[low]! + i;
      }
    }
  }
}
