import type { Count, Ratio } from "../base/index.ts";
import { pairMemory } from "./pair-memory.ts";
import type { PreparedNote } from "./prepared-note.ts";
import { reachesOf, roughnessBetween, roughnessWithin } from "./roughness.ts";
import {
  pressureStrength,
  type PressureStrength,
  type RoughnessMethod,
} from "./roughness-types.ts";

interface NoteAlone extends PressureStrength {
  readonly within: Ratio;
  readonly reaches: Float64Array;
}

/** Roughness of several prepared notes together. */
export type PreparedRoughness = (notes: readonly PreparedNote[]) => Ratio;

/**
 * Makes roughness of whole voicings from pairs of notes, each pair reckoned once.
 * @param method - published method
 * @returns function from prepared notes of one engine to total roughness on the method's scale
 * @source as {@link roughness}
 */
export function preparedRoughness(method: RoughnessMethod): PreparedRoughness {
  const memory = pairMemory();
  const single = new Map<Count, NoteAlone>();
  const alone = (note: PreparedNote): NoteAlone => {
    const known = single.get(note.index);
    if (known !== undefined) return known;
    const value = {
      within: roughnessWithin(note.pressures, method),
      reaches: reachesOf(note.pressures, method),
      ...pressureStrength(note.pressures.amplitude),
    };
    single.set(note.index, value);
    return value;
  };
  const between = (a: PreparedNote, b: PreparedNote): Ratio => {
    const [low, high] = a.index <= b.index ? [a, b] : [b, a];
    return memory(low.index, high.index, () =>
      roughnessBetween(low.pressures, high.pressures, method, [
        alone(low).reaches,
        alone(high).reaches,
      ]),
    );
  };
  return (notes) => {
    let sum = 0;
    let peak = 0;
    let power = 0;
    for (let first = 0; first < notes.length; first += 1) {
      const own = alone(notes[first]!);
      sum += own.within;
      power += own.power;
      if (own.peak > peak) peak = own.peak;
      for (let second = first + 1; second < notes.length; second += 1)
        sum += between(notes[first]!, notes[second]!);
    }
    return sum / method.divisor({ peak, power });
  };
}
