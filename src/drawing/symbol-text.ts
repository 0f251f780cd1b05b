import type { Brush } from "./brush.ts";
import { svgElement } from "./svg-element.ts";

/**
 * Writes a chord symbol; one that would run out of the picture starts further left.
 * @param symbol - with ♭ and ♯
 * @param place - left end of the baseline
 * @param size - font size, CSS pixels
 * @param brush - width and colours
 * @returns the text
 */
export function symbolText(
  symbol: string,
  place: { readonly x: number; readonly y: number },
  size: number,
  { theme, width, measure, textSize }: Brush,
): SVGElement {
  const boldWidth = (measure(symbol) * size * BOLD) / textSize;
  const x = Math.max(0, Math.min(place.x, width - boldWidth));
  const look = { "font-size": size, "font-weight": 700, fill: theme.ink };
  return svgElement("text", { class: "staff-chord-symbol", x, y: place.y, ...look }, symbol);
}

/** Bold letters are about this much wider than plain ones. */
const BOLD = 1.1;
