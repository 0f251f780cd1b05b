import type { Ratio } from "../base/index.ts";
import {
  pressureStrength,
  type PairRoughness,
  type Roughness,
  type RoughnessMethod,
} from "./roughness-types.ts";
import { spectrumAmplitudes, type AmplitudeSpectrum, type Spectrum } from "./spectrum.ts";

/** A sum that does not depend on the order of its terms in the last bit. */
function orderlessSum(values: number[]): number {
  return values.sort((a, b) => a - b).reduce((sum, value) => sum + value, 0);
}

/**
 * Where the roughness of each partial of a note ends, upwards.
 * @param note - pressures of the note, n partials
 * @param method - published method
 * @returns n frequencies in Hz, infinite where the method has no end
 */
export function reachesOf(note: AmplitudeSpectrum, method: RoughnessMethod): Float64Array {
  return note.hz.map((hz) => method.reach?.(hz) ?? Infinity);
}

/** Sum over pairs of a partial of one note with higher or equal partials of the other. */
function roughnessUpward(
  lower: AmplitudeSpectrum,
  upper: AmplitudeSpectrum,
  method: RoughnessMethod,
  reaches: Float64Array,
  isEqualCounted: boolean,
): Ratio {
  let sum = 0;
  let first = 0;
  for (let i = 0; i < lower.hz.length; i += 1) {
    const low = lower.hz[i]!;
    const amplitude = lower.amplitude[i]!;
    const end = reaches[i]!;
    while (first < upper.hz.length && upper.hz[first]! < low) first += 1;
    for (let j = first; j < upper.hz.length && upper.hz[j]! < end; j += 1)
      if (isEqualCounted || upper.hz[j]! > low)
        sum += method.pair(low, amplitude, upper.hz[j]!, upper.amplitude[j]!);
  }
  return sum;
}

/**
 * Undivided roughness between the partials of two notes.
 * @param first - pressures of one note
 * @param second - pressures of the other
 * @param method - published method
 * @param reaches - results of reachesOf for both, where they are at hand
 * @returns sum over all pairs of one partial of each; the order of notes does not matter
 */
export function roughnessBetween(
  first: AmplitudeSpectrum,
  second: AmplitudeSpectrum,
  method: RoughnessMethod,
  reaches: readonly [Float64Array, Float64Array] = [
    reachesOf(first, method),
    reachesOf(second, method),
  ],
): Ratio {
  return (
    roughnessUpward(first, second, method, reaches[0], true) +
    roughnessUpward(second, first, method, reaches[1], false)
  );
}

/**
 * Undivided roughness inside one note.
 * @param note - pressures of the note
 * @param method - published method
 * @returns sum over all pairs of its partials
 */
export function roughnessWithin(note: AmplitudeSpectrum, method: RoughnessMethod): Ratio {
  const { hz, amplitude } = note;
  let sum = 0;
  for (let i = 0; i < hz.length; i += 1) {
    const end = method.reach?.(hz[i]!) ?? Infinity;
    for (let j = i + 1; j < hz.length && hz[j]! < end; j += 1)
      sum += method.pair(hz[i]!, amplitude[i]!, hz[j]!, amplitude[j]!);
  }
  return sum;
}

/**
 * Roughness of several notes together, in total and by pairs of notes. Partials of two notes at one
 * frequency are kept apart, as the methods were published.
 * @param notes - one spectrum a note
 * @param method - published method
 * @returns total, its two shares, and one value for every two notes, all on the method's scale
 */
export function roughness(notes: readonly Spectrum[], method: RoughnessMethod): Roughness {
  const sounds = notes.map(spectrumAmplitudes);
  const divisor = method.divisor(
    pressureStrength(Float64Array.from(sounds.flatMap((sound) => [...sound.amplitude]))),
  );
  const inside = sounds.map((sound) => roughnessWithin(sound, method) / divisor);
  const pairs: PairRoughness[] = [];
  for (let first = 0; first < sounds.length; first += 1)
    for (let second = first + 1; second < sounds.length; second += 1)
      pairs.push({
        first,
        second,
        value: roughnessBetween(sounds[first]!, sounds[second]!, method) / divisor,
      });
  const within = orderlessSum(inside);
  const between = orderlessSum(pairs.map((pair) => pair.value));
  return { total: within + between, within, between, pairs };
}
