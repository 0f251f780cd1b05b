import { shortNumber } from "../svg-element.ts";
import type { OutlineFont } from "./outline-font.ts";

/** A text as one shape. */
export interface OutlinedText {
  /** Path data, y downwards, from the left end of the baseline. */
  readonly path: string;
  readonly width: number;
}

/**
 * Writes a text as a shape, letter after letter.
 * @param text - any text
 * @param font - the face
 * @param size - font size, drawing units
 * @param at - left end of the baseline
 * @returns the shape; undefined where the face lacks a letter
 */
export function outlineText(
  text: string,
  font: OutlineFont,
  size: number,
  at: { readonly x: number; readonly y: number } = { x: 0, y: 0 },
): OutlinedText | undefined {
  const scale = size / font.unitsPerEm;
  let x = at.x;
  let path = "";
  for (const letter of text) {
    const glyph = font.glyphOf(letter.codePointAt(0) ?? 0);
    if (glyph === undefined) return undefined;
    path += glyphPath(font, glyph, scale, x, at.y);
    x += font.advanceOf(glyph) * scale;
  }
  return { path, width: x - at.x };
}

function glyphPath(font: OutlineFont, glyph: number, scale: number, x: number, y: number): string {
  const point = (across: number, up: number) =>
    `${shortNumber(x + scale * across)} ${shortNumber(y - scale * up)}`;
  return font
    .outlineOf(glyph)
    .map((step) => {
      if (step.kind === "close") return "Z";
      if (step.kind !== "curve") return `${step.kind === "move" ? "M" : "L"}${point(...step.to)}`;
      const [a, b, c, d, e, f] = step.points;
      return `C${point(a!, b!)} ${point(c!, d!)} ${point(e!, f!)}`;
    })
    .join("");
}
