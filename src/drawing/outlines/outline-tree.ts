import { svgElement } from "../svg-element.ts";
import type { OutlineFonts } from "./outline-fonts.ts";
import { outlineText } from "./outline-text.ts";

/** CSS pixels a point. Source: CSS Values and Units 4, absolute lengths. */
const pixelsPerPoint = 4 / 3;

/**
 * Turns every text of a drawing into a shape, so that it looks the same where none of its fonts is.
 * A text with a letter that the faces lack stays a text.
 * @param root - the drawing, changed in place
 * @param fonts - the faces
 */
export function outlineTexts(root: SVGElement, fonts: OutlineFonts): void {
  for (const text of root.querySelectorAll("text")) {
    const shape = shapeOf(text, fonts);
    if (shape === undefined) text.setAttribute("font-family", "serif");
    else text.replaceWith(shape);
  }
}

function shapeOf(text: SVGTextElement, fonts: OutlineFonts): SVGElement | undefined {
  const content = text.textContent;
  if (content === "") return svgElement("g", {});
  const size = sizeOf(inherited(text, "font-size"));
  const isMusic = inherited(text, "font-family").startsWith("Bravura");
  const isBold = Number(inherited(text, "font-weight")) >= 600;
  const font = isMusic ? fonts.music : isBold ? fonts.bold : fonts.plain;
  const measured = outlineText(content, font, size);
  if (measured === undefined) return undefined;
  const isEnd = text.getAttribute("text-anchor") === "end";
  const x = numberOf(text, "x") - (isEnd ? measured.width : 0);
  const drawn = outlineText(content, font, size, { x, y: numberOf(text, "y") });
  const fill = text.getAttribute("fill");
  return svgElement("path", {
    d: drawn?.path ?? "",
    stroke: "none",
    ...(fill === null ? {} : { fill }),
  });
}

function inherited(element: Element, name: string): string {
  return element.closest(`[${name}]`)?.getAttribute(name) ?? "";
}

function sizeOf(text: string): number {
  const number = Number.parseFloat(text);
  if (!Number.isFinite(number)) return 12;
  return text.endsWith("pt") ? number * pixelsPerPoint : number;
}

function numberOf(element: Element, name: string): number {
  return Number(element.getAttribute(name) ?? 0);
}
