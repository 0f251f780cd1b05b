/**
 * Degree labels of notes that are no tones of their chord, by semitones above the root. Over a minor
 * third six semitones are a flat fifth, over a major third a sharp eleventh; chords without a seventh
 * have sixths, chords with one have thirteenths.
 * Source: common practice, no single source.
 */
export const FOREIGN_DEGREES = Object.freeze({
  majorThird: ["1", "b9", "9", "b3", "3", "11", "#11", "5", "b13", "13", "b7", "7"],
  minorThird: ["1", "b9", "9", "b3", "3", "11", "b5", "5", "b13", "13", "b7", "7"],
} as const);
