/** A degree label taken apart. */
export interface DegreeLabel {
  readonly number: number;
  /** Semitones against the major scale on the root. */
  readonly alteration: number;
}

/**
 * Takes a degree label apart.
 * @param label - ASCII: "1", "b3", "bb7", "#11"
 * @returns number and alteration
 * @throws RangeError when it is no degree label
 */
export function parseLabel(label: string): DegreeLabel {
  const [, signs = "", digits = ""] = /^(b{0,2}|#{0,2})(\d{1,2})$/.exec(label) ?? [];
  if (digits === "") throw new RangeError(`a degree is a number with its signs, got "${label}"`);
  const alteration = signs.startsWith("b") ? -signs.length : signs.length;
  return { number: Number(digits), alteration };
}

/**
 * Prints a degree label.
 * @param label - number and alteration
 * @returns ASCII: "b9"
 */
export function labelText({ number, alteration }: DegreeLabel): string {
  return (alteration < 0 ? "b" : "#").repeat(Math.abs(alteration)) + String(number);
}

const MAJOR_SCALE: readonly number[] = Object.freeze([0, 2, 4, 5, 7, 9, 11]);

/**
 * Semitones of a degree above the root, in one octave.
 * @param label - number and alteration
 * @returns 0 to 11
 */
export function semitonesOf({ number, alteration }: DegreeLabel): number {
  return ((MAJOR_SCALE[(number - 1) % 7] ?? 0) + alteration + 24) % 12;
}
