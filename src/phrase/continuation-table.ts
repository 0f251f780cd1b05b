/** A wish for the voicing that a held one moves into. */
export interface ContinuationRow {
  readonly id: "smoothest" | "same" | "wider" | "narrower" | "lighter" | "heavier";
  readonly label: string;
  /** Factors on the held voicing's span, density and weight; null where only the lines count. */
  readonly factors: {
    readonly span: number;
    readonly density: number;
    readonly weight: number;
  } | null;
}

/**
 * Continuations in the order in which they are offered. Source: judgement; the factors are those of
 * the phrase's alternatives, a little milder, since one step is judged and not a whole phrase.
 */
export const continuationRows: readonly ContinuationRow[] = Object.freeze<ContinuationRow[]>([
  { id: "smoothest", label: "Smoothest lines", factors: null },
  { id: "same", label: "Same texture", factors: { span: 1, density: 1, weight: 1 } },
  { id: "wider", label: "Wider", factors: { span: 1.35, density: 0.8, weight: 1 } },
  { id: "narrower", label: "Narrower", factors: { span: 0.65, density: 1.3, weight: 1 } },
  { id: "lighter", label: "Lighter", factors: { span: 1, density: 0.9, weight: 0.6 } },
  { id: "heavier", label: "Heavier", factors: { span: 1.1, density: 1.1, weight: 1.6 } },
]);

/** Time from one chord to the other, seconds. Source: judgement, one for each class of speed. */
export const stepSeconds = Object.freeze({ slow: 1, medium: 0.35, fast: 0.18 });
