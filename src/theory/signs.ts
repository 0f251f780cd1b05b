import type { Count } from "../base/index.ts";
import { PLAIN_SIGNS } from "./sign-table.ts";

/** How accidentals are printed: b and #, or ♭ and ♯. */
export type SignStyle = "ascii" | "unicode";

/** Text in plain signs, each of its characters with its place in what the user typed. */
export interface PlainText {
  readonly text: string;
  /** Index into the typed text for each character of `text`, and one past the end. */
  readonly typedAt: readonly number[];
}

/**
 * Replaces typographic signs (♭ ♯ 𝄫 𝄪 ∆ △ ^ Ø º − and their like) by the plain ones, keeping track of
 * where each came from.
 * @param typed - what the user typed
 * @returns plain text with the place of every character in `typed`
 */
export function plainSigns(typed: string): PlainText {
  const typedAt: number[] = [];
  let text = "";
  let at = 0;
  for (const sign of typed) {
    const plain = PLAIN_SIGNS[sign] ?? sign;
    text += plain;
    for (let unit = 0; unit < plain.length; unit++) typedAt.push(at);
    at += sign.length;
  }
  typedAt.push(at);
  return { text, typedAt };
}

/**
 * An alteration as accidental signs.
 * @param alteration - semitones, −2 to 2
 * @param style - plain or typographic signs
 * @returns "bb", "b", "", "#", "##", or the same with ♭ ♯ (double signs by two: few text fonts hold 𝄫)
 * @throws RangeError beyond a double accidental
 * @example accidentalText(-2, "ascii") // "bb"
 */
export function accidentalText(alteration: Count, style: SignStyle): string {
  if (!Number.isInteger(alteration) || Math.abs(alteration) > 2)
    throw new RangeError(`alteration must be a whole number from -2 to 2, got ${alteration}`);
  const [flat, sharp] = style === "ascii" ? ["b", "#"] : ["♭", "♯"];
  return alteration < 0 ? flat.repeat(-alteration) : sharp.repeat(alteration);
}

/**
 * How much accidental signs alter a letter.
 * @param signs - "", "b", "bb", "#" or "##"
 * @returns semitones, −2 to 2
 * @example alterationOf("##") // 2
 */
export function alterationOf(signs: string): Count {
  return signs.startsWith("b") ? -signs.length : signs.length;
}
