import type { Count } from "../../base/index.ts";

/**
 * A 16-bit number, most significant byte first.
 * @param value - 0 to 65535
 * @returns two bytes
 */
export const uint16 = (value: Count): readonly number[] => [(value >> 8) & 0xff, value & 0xff];

/**
 * A 32-bit number, most significant byte first.
 * @param value - 0 to 2³² − 1
 * @returns four bytes
 */
export const uint32 = (value: Count): readonly number[] => [
  (value >>> 24) & 0xff,
  (value >>> 16) & 0xff,
  (value >>> 8) & 0xff,
  value & 0xff,
];

/**
 * A number in groups of seven bits, all bytes but the last with their top bit set.
 * @param value - 0 to 2²⁸ − 1
 * @returns one to four bytes
 * @throws RangeError beyond
 * @source Standard MIDI Files 1.0, variable-length quantity
 * @example variableLength(128) // [0x81, 0x00]
 */
export function variableLength(value: Count): readonly number[] {
  if (!(value >= 0 && value < 2 ** 28))
    throw new RangeError(`a MIDI file holds times and lengths up to 2^28 - 1, got ${value}`);
  const bytes = [value & 0x7f];
  for (let rest = value >>> 7; rest > 0; rest >>>= 7) bytes.unshift(0x80 | (rest & 0x7f));
  return bytes;
}

const PLAIN: Readonly<Record<string, string>> = Object.freeze({
  "♭": "b",
  "♯": "#",
  "–": "-",
  "—": "-",
  "’": "'",
  "‘": "'",
  "“": '"',
  "”": '"',
  "…": "...",
});

/**
 * Text as a MIDI file holds it. Music signs and dashes get plain forms; what Latin-1 does not have
 * becomes a question mark.
 * @param text - any text
 * @returns one byte a character
 * @source Standard MIDI Files 1.0, text events (Latin-1 by common practice)
 */
export function latin1(text: string): readonly number[] {
  return [...text]
    .flatMap((character) => [...(PLAIN[character] ?? character)])
    .map((character) => {
      const code = character.codePointAt(0)!;
      return code > 0xff || (code < 0x20 && code !== 0x0a) ? 0x3f : code;
    });
}

/**
 * Puts byte arrays one behind the other.
 * @param parts - in order
 * @returns one array
 */
export function joinBytes(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
