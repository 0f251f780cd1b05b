/** Sizes of a line of the melody, CSS pixels. */
export const staff = Object.freeze({
  /** Between two lines of the staff. */
  space: 8,
  /** Of the lowest line, E4. */
  bottom: 92,
  /** Of the chord symbols' feet. */
  chords: 18,
  /** Of the words below the notes. */
  words: 128,
  height: 134,
});

/** Height of a line or space. */
export function yOfSteps(steps: number): number {
  return staff.bottom - ((steps - 30) * staff.space) / 2;
}

/** Line or space at a height, letter steps. */
export function stepsAtY(y: number): number {
  return Math.round(30 + ((staff.bottom - y) * 2) / staff.space);
}
