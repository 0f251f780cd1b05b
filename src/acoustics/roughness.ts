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
 * Undivided roughness between the partials of two notes.
 * @param first - pressures of one note
 * @param second - pressures of the other
 * @param method - published method
 * @returns sum over all pairs of one partial of each; the order of notes does not matter
 */
export function roughnessBetween(
  first: AmplitudeSpectrum,
  second: AmplitudeSpectrum,
  method: RoughnessMethod,
): Ratio {
  const terms: number[] = [];
  for (let i = 0; i < first.hz.length; i += 1)
    for (let j = 0; j < second.hz.length; j += 1) {
      const a = first.hz[i]!;
      const b = second.hz[j]!;
      const ampA = first.amplitude[i]!;
      const ampB = second.amplitude[j]!;
      terms.push(a <= b ? method.pair(a, ampA, b, ampB) : method.pair(b, ampB, a, ampA));
    }
  return orderlessSum(terms);
}

/**
 * Undivided roughness inside one note.
 * @param note - pressures of the note
 * @param method - published method
 * @returns sum over all pairs of its partials
 */
export function roughnessWithin(note: AmplitudeSpectrum, method: RoughnessMethod): Ratio {
  const terms: number[] = [];
  for (let i = 0; i < note.hz.length; i += 1)
    for (let j = i + 1; j < note.hz.length; j += 1) {
      const [low, high] = note.hz[i]! <= note.hz[j]! ? [i, j] : [j, i];
      terms.push(
        method.pair(note.hz[low]!, note.amplitude[low]!, note.hz[high]!, note.amplitude[high]!),
      );
    }
  return orderlessSum(terms);
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
