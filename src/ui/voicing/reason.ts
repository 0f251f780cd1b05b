import { reasonsFor, type Cost } from "../../voicing/index.ts";

/** One part of a reason: a cost in words, with its number. */
export interface ReasonPart {
  readonly text: string;
  readonly value: number;
}

/** Why a voicing costs what it does, against the best of its texture. */
export interface Reason {
  /** How much more than the best here; null when there is no best to compare with. */
  readonly over: number | null;
  /** Parts that add up to `over`, dearest first; or to the whole cost where `over` is 0 or null. */
  readonly parts: readonly ReasonPart[];
}

/**
 * Compares a voicing's cost with the best of the same texture, term by term.
 * @param cost - cost of the voicing
 * @param best - cost of the best of the same texture; null when that texture has none
 * @returns parts that add up to the number
 */
export function reasonFor(cost: Cost, best: Cost | null): Reason {
  const over = best === null ? null : cost.total - best.total;
  const parts = reasonsFor(cost, over === 0 ? null : best).map(({ text, value }) => ({
    text,
    value,
  }));
  return { over, parts: [...parts].sort((a, b) => Math.abs(b.value) - Math.abs(a.value)) };
}
