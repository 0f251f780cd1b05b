/** How large a pair of ladders is drawn. */
export type PairSize = "phone" | "desk" | "room";

/** Measures of a pair of ladders, CSS pixels. */
export interface PairSizes {
  /** Degree and note name, left of each ladder. */
  readonly labels: number;
  /** Degree and name of the right ladder's own notes. */
  readonly rightLabels: number;
  readonly token: { readonly width: number; readonly height: number };
  readonly between: number;
  /** Bracket and number, right of each ladder; 0 where the numbers stand below the drawing. */
  readonly aside: number;
  readonly perSemitone: number;
  /** Type: degree, note name, token. */
  readonly degree: number;
  readonly note: number;
  readonly label: number;
}

/** Sizes by where the drawing is seen. Source: the project's own design. */
export const pairSizes: Readonly<Record<PairSize, PairSizes>> = Object.freeze({
  phone: {
    labels: 62,
    rightLabels: 62,
    token: { width: 34, height: 24 },
    between: 3,
    aside: 0,
    perSemitone: 16,
    degree: 16,
    note: 13,
    label: 13,
  },
  desk: {
    labels: 92,
    rightLabels: 88,
    token: { width: 84, height: 27 },
    between: 5,
    aside: 130,
    perSemitone: 25,
    degree: 21,
    note: 16,
    label: 15.5,
  },
  room: {
    labels: 132,
    rightLabels: 112,
    token: { width: 106, height: 36 },
    between: 6,
    aside: 200,
    perSemitone: 28,
    degree: 32,
    note: 24,
    label: 21,
  },
} satisfies Readonly<Record<PairSize, PairSizes>>);
