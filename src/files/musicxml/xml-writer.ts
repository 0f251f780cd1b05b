/** An element to be written; undefined children are left out. */
export interface XmlOut {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number | undefined>>;
  readonly content: string | readonly (XmlOut | undefined)[];
}

/**
 * An element with attributes.
 * @param name - element name
 * @param attributes - in the order they are written; undefined ones are left out
 * @param content - text, or child elements
 * @returns the element
 */
export function xml(
  name: string,
  attributes: XmlOut["attributes"],
  ...content: readonly (XmlOut | undefined)[]
): XmlOut {
  return { name, attributes, content };
}

/**
 * An element that holds text.
 * @param name - element name
 * @param content - text or number
 * @param attributes - in the order they are written
 * @returns the element
 */
export function xmlText(
  name: string,
  content: string | number,
  attributes: XmlOut["attributes"] = {},
): XmlOut {
  return { name, attributes, content: String(content) };
}

/**
 * Prints an element, two spaces a level.
 * @param element - the element
 * @param indent - spaces before it
 * @returns lines, the last one ended
 * @source W3C XML 1.0, fifth edition, sections 2.2 (characters) and 2.4 (escapes)
 */
export function printXml(element: XmlOut, indent = ""): string {
  const { name, attributes, content } = element;
  const printed = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escaped(String(value)).replaceAll('"', "&quot;")}"`)
    .join("");
  const open = `${indent}<${name}${printed}`;
  if (typeof content === "string") return `${open}>${escaped(content)}</${name}>\n`;
  const children = content.filter((child) => child !== undefined);
  if (children.length === 0) return `${open}/>\n`;
  const inside = children.map((child) => printXml(child, `${indent}  `)).join("");
  return `${open}>\n${inside}${indent}</${name}>\n`;
}

/** What XML 1.0 cannot hold (control characters, lone surrogates) is dropped. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\x20-\uD7FF\uE000-\uFFFC\u{10000}-\u{10FFFF}]/gu, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;");
}
