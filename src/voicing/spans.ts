import { quantity, type Count, type Semitones } from "../base/index.ts";
import type { Instance } from "./instance-types.ts";

/** Candidate indices of a stack's highest and lowest note. */
export interface Ends {
  readonly top: Count;
  readonly bottom: Count;
}

/**
 * Every pair of highest and lowest note between which a stack with the lead may lie, by span.
 * @param instance - the question in numbers
 * @returns pairs by span in semitones, narrow spans first
 */
export function spansOf(instance: Instance): ReadonlyMap<Semitones, readonly Ends[]> {
  const { candidates, leadIndex, leadOnTop } = instance;
  const spans = new Map<Semitones, Ends[]>();
  for (let top = leadOnTop ? leadIndex : 0; top <= leadIndex; top++)
    for (let bottom = Math.max(leadIndex, top + 1); bottom < candidates.length; bottom++) {
      const span = quantity<Semitones>(candidates[top]! - candidates[bottom]!);
      spans.set(span, [...(spans.get(span) ?? []), { top, bottom }]);
    }
  return new Map([...spans].sort(([a], [b]) => a - b));
}
