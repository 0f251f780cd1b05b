/** How the curves are bent for another answer. */
export interface AlternativeRow {
  readonly id: "as-drawn" | "wider" | "closer" | "lighter" | "heavier";
  readonly label: string;
  /** Factors on span, density and weight. */
  readonly span: number;
  readonly density: number;
  readonly weight: number;
}

/**
 * Tried in this order until three differ to the ear. Source: judgement; span and density are what
 * listeners hear first of a texture.
 */
export const alternativeRows: readonly AlternativeRow[] = Object.freeze<AlternativeRow[]>([
  { id: "as-drawn", label: "As drawn", span: 1, density: 1, weight: 1 },
  { id: "wider", label: "Wider and more open", span: 1.4, density: 0.75, weight: 1 },
  { id: "closer", label: "Closer and denser", span: 0.6, density: 1.35, weight: 1 },
  { id: "lighter", label: "Lighter", span: 0.85, density: 0.8, weight: 0.55 },
  { id: "heavier", label: "Heavier", span: 1.15, density: 1.15, weight: 1.8 },
]);

/**
 * Share of the sounding pitches, weighted by time, in which two answers must differ to count as
 * heard apart. Source: judgement.
 */
export const leastDifference = 0.3;
