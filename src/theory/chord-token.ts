import type { Count } from "../base/index.ts";
import { CHORD_WORDS, type ChordWord } from "./chord-word-table.ts";

interface Placed {
  /** Index of its first character. */
  readonly at: Count;
  /** Index just past its last character. */
  readonly end: Count;
}

/** One piece of the text behind a chord's root. */
export type ChordToken =
  | (Placed & { readonly kind: "word"; readonly word: ChordWord })
  | (Placed & { readonly kind: "number"; readonly value: Count })
  /** "b9", "#11"; no value when the number is missing. */
  | (Placed & {
      readonly kind: "altered";
      readonly signs: string;
      readonly value: Count | undefined;
    })
  | (Placed & { readonly kind: "sign"; readonly sign: "(" | ")" | "," | "/" | "+" | "-" })
  /** Text that belongs to no chord symbol, up to the end. */
  | (Placed & { readonly kind: "unknown" });

const WORDS = new RegExp(CHORD_WORDS.map((row) => `(${row.spellings})`).join("|"), "y");
const NUMBER = /(\d+)(?:st|nd|rd|th)?/y;
const ALTERED = /(bb|##|b|#)(?:\s*(\d+)(?:th)?|(?![A-Za-z]))/y;
const SIGN = /[()[\],;/+-]/y;
const PLAIN: Readonly<Record<string, "(" | ")" | ",">> = { "[": "(", "]": ")", ";": "," };

/**
 * Cuts the text behind a chord's root into words, numbers, altered numbers and signs.
 * @param text - plain text (see plainSigns)
 * @param start - index where the root ends
 * @param stop - index where the slash bass begins, or the length of the text
 * @returns the pieces in order; text that fits nothing becomes one last unknown piece
 */
export function chordTokens(text: string, start: Count, stop: Count): readonly ChordToken[] {
  const body = text.slice(0, stop);
  const tokens: ChordToken[] = [];
  let at = start;
  while (at < body.length) {
    if (body.charAt(at) === " ") {
      at += 1;
      continue;
    }
    const token = tokenAt(body, at);
    tokens.push(token);
    at = token.end;
  }
  return tokens;
}

function tokenAt(text: string, at: number): ChordToken {
  const word = match(WORDS, text, at);
  if (word !== null) {
    const row = CHORD_WORDS[word.slice(1).findIndex((group) => group !== undefined)];
    const bare = at + word[0].length;
    const end = /\w/.test(text.charAt(bare - 1)) && text.charAt(bare) === "." ? bare + 1 : bare;
    if (row !== undefined) return { kind: "word", word: row.word, at, end };
  }
  const number = match(NUMBER, text, at);
  if (number !== null)
    return { kind: "number", value: Number(number[1]), at, end: at + number[0].length };
  const altered = match(ALTERED, text, at);
  if (altered !== null) {
    const value = altered[2] === undefined ? undefined : Number(altered[2]);
    const end = at + altered[0].trimEnd().length;
    return { kind: "altered", signs: altered[1] ?? "", value, at, end };
  }
  const sign = match(SIGN, text, at)?.[0];
  if (sign === undefined) return { kind: "unknown", at, end: text.length };
  return { kind: "sign", sign: PLAIN[sign] ?? (sign as "/"), at, end: at + 1 };
}

function match(intoPattern: RegExp, text: string, at: number): RegExpExecArray | null {
  intoPattern.lastIndex = at;
  return intoPattern.exec(text);
}
