/**
 * Writes ASCII accidentals as the signs players read: "Eb4" → "E♭4", "#11" → "♯11".
 * @param text - a note name, a degree or a sentence with note names and degrees in it
 * @returns the same text with ♭ and ♯
 */
export function withSigns(text: string): string {
  return text
    .replace(
      /(?<![A-Za-z])([A-G])(b{1,2}|#{1,2})(?![a-z])/g,
      (_, letter, run) => letter + signsOf(run),
    )
    .replace(/(?<![A-Za-z0-9])(b{1,2}|#{1,2})(?=\d)/g, (run) => signsOf(run));
}

/**
 * Writes a chord symbol with signs; every b or # in a symbol is an accidental.
 * @param symbol - as typed, e.g. "C7(b9,#11)/Bb"
 * @returns the same with ♭ and ♯
 */
export function chordWithSigns(symbol: string): string {
  return symbol.replace(/b/g, "♭").replace(/#/g, "♯");
}

/**
 * The accidentals in words, for a screen reader: "E♭4" → "E flat 4".
 * @param text - text with ASCII accidentals or signs
 * @returns text to be spoken
 */
export function spoken(text: string): string {
  return withSigns(text)
    .replace(/♭♭/g, " double flat ")
    .replace(/♯♯/g, " double sharp ")
    .replace(/♭/g, " flat ")
    .replace(/♯/g, " sharp ")
    .replace(/ {2,}/g, " ")
    .trim();
}

function signsOf(run: string): string {
  return run.replace(/b/g, "♭").replace(/#/g, "♯");
}

/**
 * The accidental of a note name, as a sign.
 * @param name - ASCII note name, e.g. "Eb4"
 * @returns "♭", "♯", doubled ones, or nothing
 */
export function signOf(name: string): string {
  return signsOf(/^[A-G](b*|#*)/.exec(name)?.[1] ?? "");
}
