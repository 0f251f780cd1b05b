import type { Hertz, Ratio } from "../base/index.ts";
import { mudBetween, mudVerdict, type MudVerdict } from "./mud.ts";
import { pairMemory } from "./pair-memory.ts";
import type { PreparedNote } from "./prepared-note.ts";

/** Worst neighbouring pair of a voicing. */
export interface HeardMud {
  /** 0 with fewer than two pitches. */
  readonly value: Ratio;
  readonly verdict: MudVerdict;
  /** The pair to blame, lower note first; null with fewer than two pitches. */
  readonly pair: readonly [low: Hertz, high: Hertz] | null;
}

/**
 * Makes mud of voicings from prepared notes, each pair of pitches reckoned once.
 * @returns function from notes of one engine, any order, to the worst neighbouring pair
 * @source as {@link mud}
 */
export function preparedMud(): (notes: readonly PreparedNote[]) => HeardMud {
  const table = pairMemory();
  return (notes) => {
    const stack = [...notes].sort((a, b) => a.fundamental - b.fundamental);
    let value = 0;
    let pair: HeardMud["pair"] = null;
    for (let index = 1; index < stack.length; index += 1) {
      const low = stack[index - 1]!;
      const high = stack[index]!;
      if (low.pitch === high.pitch) continue;
      const found = table(low.pitch, high.pitch, () =>
        mudBetween(low.fundamental, high.fundamental),
      );
      if (pair === null || found > value) {
        value = found;
        pair = [low.fundamental, high.fundamental];
      }
    }
    return { value, verdict: mudVerdict(value), pair };
  };
}
