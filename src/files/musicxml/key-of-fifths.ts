import type { Key, Letter } from "../../theory/index.ts";

const LINE_OF_FIFTHS = "FCGDAEB";

/**
 * The key of a signature.
 * @param fifths - sharps above 0, flats below; more than seven are read enharmonically
 * @param mode - as the file names it; minor and aeolian are minor, anything else counts as major
 * @returns the key
 * @source W3C MusicXML 4.0, fifths and mode
 * @example keyOfFifths(-3, "major") // E flat major
 */
export function keyOfFifths(fifths: number, mode: string): Key {
  const isMinor = mode === "minor" || mode === "aeolian";
  let signs = fifths;
  while (signs > 7) signs -= 12;
  while (signs < -7) signs += 12;
  const place = signs + 1 + (isMinor ? 3 : 0);
  const letter = LINE_OF_FIFTHS[((place % 7) + 7) % 7] as Letter;
  return {
    tonic: { letter, alteration: Math.floor(place / 7) },
    mode: isMinor ? "minor" : "major",
  };
}
