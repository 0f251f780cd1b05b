const SVG = "http://www.w3.org/2000/svg";

/**
 * Makes an SVG element.
 * @param name - element name
 * @param attributes - numbers are cut to two decimals, so that files stay small and alike
 * @param content - text, or children in order
 * @returns the element, not yet in a document
 */
export function svgElement<K extends keyof SVGElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string | number>>,
  content: string | readonly SVGElement[] = [],
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes))
    element.setAttribute(key, typeof value === "number" ? shortNumber(value) : value);
  if (typeof content === "string") element.textContent = content;
  else element.append(...content);
  return element;
}

/**
 * A number for an attribute.
 * @param value - any number
 * @returns at most two decimals, no trailing noughts
 */
export function shortNumber(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}
