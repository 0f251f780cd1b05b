/** Note values by their length in whole notes. Source: W3C MusicXML 4.0, note-type-value. */
export const noteValues = Object.freeze([
  ["breve", 2],
  ["whole", 1],
  ["half", 1 / 2],
  ["quarter", 1 / 4],
  ["eighth", 1 / 8],
  ["16th", 1 / 16],
  ["32nd", 1 / 32],
  ["64th", 1 / 64],
  ["128th", 1 / 128],
] as const);

/** Name of a note value. */
export type NoteValueName = (typeof noteValues)[number][0];

/** So many notes that are tried for a window which the plain values do not fill. */
export const tupletCounts = Object.freeze([3, 5, 6, 7, 9, 11, 13] as const);
