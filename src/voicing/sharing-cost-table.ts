import type { Count } from "../base/index.ts";

/**
 * Costs of how many players share a note. `marginal[m]` is the cost of player m + 1 on the note
 * (the first is free); past the end of a row each further player adds `then` more than the one
 * before. Rising all the way, which is what keeps the search exact. Figures: judgement.
 */
export interface SharingRow {
  readonly marginal: readonly number[];
  readonly then: number;
  readonly source: string;
}

const source =
  "judgement; doubling of the lead first, guide tones seldom: common practice, no single source";

/** N1: by note, all players together. */
export const sharedNote = Object.freeze({
  lead: { marginal: [0, -1, 0, 1, 3], then: 2, source } satisfies SharingRow,
  low: { marginal: [0, 0, 4, 7], then: 3, source } satisfies SharingRow,
  other: { marginal: [0, 1], then: 1, source } satisfies SharingRow,
  /** The root and altered tensions cost this much more for each player after the first. */
  rootOrAltered: 1,
  /** A foreign lead costs this much more for each player after the first. */
  foreignLead: 2,
  /** Notes below this one count as low. */
  lowBelow: 48,
});

/** N2: by note and section. */
export const sharedInSection = Object.freeze({
  lead: { marginal: [0, 1, 4], then: 2, source } satisfies SharingRow,
  other: { marginal: [0, 2, 4], then: 2, source } satisfies SharingRow,
});

/**
 * Cost of one more player on a note.
 * @param row - the table's row
 * @param already - players there
 * @returns what the next one costs
 * @example marginalCost(sharedNote.other, 3) // 3
 */
export function marginalCost(row: SharingRow, already: Count): Count {
  const known = row.marginal[already];
  if (known !== undefined) return known;
  const last = row.marginal.length - 1;
  return (row.marginal[last] ?? 0) + row.then * (already - last);
}
