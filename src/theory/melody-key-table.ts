// Source: scales and their seventh chords, common practice; in minor the chords on the natural
// degrees, with the dominant seventh and the diminished seventh of the raised leading tone.

/** Steps of a key's scale in semitones above the tonic. */
export const scaleSteps = Object.freeze({
  major: Object.freeze([0, 2, 4, 5, 7, 9, 11]),
  minor: Object.freeze([0, 2, 3, 5, 7, 8, 10, 11]),
});

/** Seventh chord on each step, as the symbol writes it behind the root. */
export const diatonicSevenths = Object.freeze({
  major: new Map<number, string>([
    [0, "maj7"],
    [2, "m7"],
    [4, "m7"],
    [5, "maj7"],
    [7, "7"],
    [9, "m7"],
    [11, "m7(b5)"],
  ]),
  minor: new Map<number, string>([
    [0, "m7"],
    [2, "m7(b5)"],
    [3, "maj7"],
    [5, "m7"],
    [7, "7"],
    [8, "maj7"],
    [10, "7"],
    [11, "dim7"],
  ]),
});
