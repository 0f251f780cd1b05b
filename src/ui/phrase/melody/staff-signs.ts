/** Glyphs of music fonts. Source: W3C SMuFL 1.4. */
export const glyphs = Object.freeze({
  clef: "\uE050",
  headWhole: "\uE0A2",
  headHalf: "\uE0A3",
  headBlack: "\uE0A4",
  dot: "\uE1E7",
  wholeRest: "\uE4E3",
});

/** By share of a whole note. */
export const rests: Readonly<Record<number, string>> = Object.freeze({
  1: "\uE4E3",
  2: "\uE4E4",
  4: "\uE4E5",
  8: "\uE4E6",
  16: "\uE4E7",
  32: "\uE4E8",
});

/** Flags up and down. */
export const flags: Readonly<Record<number, readonly [up: string, down: string]>> = Object.freeze({
  8: ["\uE240", "\uE241"],
  16: ["\uE242", "\uE243"],
  32: ["\uE244", "\uE245"],
});

/** Accidentals by their usual names. */
export const accidentals: Readonly<Record<string, string>> = Object.freeze({
  "flat-flat": "\uE264",
  flat: "\uE260",
  natural: "\uE261",
  sharp: "\uE262",
  "double-sharp": "\uE263",
});

/** A figure of a time signature. */
export const figure = (digit: string): string => String.fromCharCode(0xe080 + Number(digit));

/** Where the signs of a key stand in the treble clef, letter steps, in their order. */
export const keyPlaces = Object.freeze({
  sharps: Object.freeze([38, 35, 39, 36, 33, 37, 34]),
  flats: Object.freeze([34, 37, 33, 36, 32, 35, 31]),
});
