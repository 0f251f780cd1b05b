import { fail, ok, type Count, type Result } from "../../base/index.ts";

/** An element that was read. Text is that of the element itself, its children's left out. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

/** Longest text that is read, in characters. */
const MOST_XML_CHARACTERS: Count = 32_000_000;
/** Deepest nesting; a MusicXML score needs about ten levels. */
const MOST_DEPTH: Count = 64;
/** Most elements; a score of forty parts and a thousand bars has about two millions. */
const MOST_ELEMENTS: Count = 4_000_000;
const MOST_ATTRIBUTES: Count = 64;

const ENTITIES: Readonly<Record<string, string>> = Object.freeze({
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
});

/**
 * Reads XML that holds data: elements, attributes, text, CDATA. Comments and processing instructions
 * are passed over. A document type is passed over too, but one that declares anything itself is
 * refused, so that there are no entities but the five of XML and numbered characters, and nothing
 * is ever fetched. Size, depth and number of elements are bounded, and no recursion is used.
 * @param text - the document
 * @returns its root, or a problem with its position: "xml-empty", "xml-too-large", "xml-too-deep",
 *   "xml-declares", "xml-entity", "xml-broken", "xml-cut-off"
 * @source W3C XML 1.0, fifth edition
 */
export function readXml(text: string): Result<XmlElement> {
  if (text.length > MOST_XML_CHARACTERS)
    return fail("xml-too-large", `The file is larger than ${MOST_XML_CHARACTERS / 1e6} MB.`);
  try {
    return ok(new XmlReading(text).root());
  } catch (fault) {
    if (fault instanceof XmlFault)
      return fail(fault.code, fault.message, { position: fault.position });
    throw fault;
  }
}

/** Why a document cannot be read. Never leaves this file. */
class XmlFault extends Error {
  readonly code: string;
  readonly position: Count;

  constructor(code: string, message: string, position: Count) {
    super(message);
    this.code = code;
    this.position = position;
  }
}

interface OpenElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: XmlElement[];
  text: string;
}

const NAME = /[A-Za-z_:\u0080-\uffff][\w:.\-\u0080-\uffff]*/y;
const SPACE = /[ \t\r\n]*/y;

class XmlReading {
  private readonly text: string;
  private at = 0;
  private elements = 0;

  constructor(text: string) {
    this.text = text;
  }

  root(): XmlElement {
    if (this.text.charCodeAt(0) === 0xfeff) this.at = 1;
    this.misc();
    if (this.at >= this.text.length)
      throw new XmlFault("xml-empty", "The file holds no XML.", this.at);
    if (this.text[this.at] !== "<")
      throw new XmlFault("xml-broken", "The file is not XML: it does not begin with <.", this.at);
    const root = this.tree();
    this.misc();
    if (this.at < this.text.length) throw this.broken("something follows the end of the document");
    return root;
  }

  /** One element with everything inside it. */
  private tree(): XmlElement {
    const open: OpenElement[] = [];
    for (;;) {
      const begun = this.startTag();
      const isEmpty = this.takes("/>");
      if (!isEmpty && !this.takes(">")) throw this.broken(`the tag <${begun.name} is not closed`);
      if (!isEmpty) {
        open.push(begun);
        if (open.length > MOST_DEPTH)
          throw new XmlFault(
            "xml-too-deep",
            `Elements are nested more than ${MOST_DEPTH} deep: this is no score.`,
            this.at,
          );
      } else if (open.length === 0) return begun;
      else open.at(-1)!.children.push(begun);
      const done = this.inside(open);
      if (done !== undefined) return done;
    }
  }

  /** Text and end tags up to the next start tag; the root when it ends. */
  private inside(open: OpenElement[]): XmlElement | undefined {
    for (;;) {
      const current = open.at(-1)!;
      const next = this.text.indexOf("<", this.at);
      if (next < 0)
        throw new XmlFault(
          "xml-cut-off",
          `The file ends inside <${current.name}>: it was cut off.`,
          this.text.length,
        );
      if (next > this.at) current.text += this.unescaped(this.at, next);
      this.at = next;
      if (this.takes("<![CDATA[")) current.text += this.upTo("]]>");
      else if (this.takes("<!--")) this.upTo("-->");
      else if (this.takes("<?")) this.upTo("?>");
      else if (this.takes("</")) {
        this.endTag(current.name);
        open.pop();
        const parent = open.at(-1);
        if (parent === undefined) return current;
        parent.children.push(current);
      } else return undefined;
    }
  }

  private startTag(): OpenElement {
    this.at += 1;
    this.elements += 1;
    if (this.elements > MOST_ELEMENTS)
      throw new XmlFault("xml-too-large", "The file has too many elements to be a score.", this.at);
    const name = this.name("an element");
    const attributes = new Map<string, string>();
    for (;;) {
      const before = this.at;
      this.space();
      const sign = this.text[this.at];
      if (sign === ">" || sign === "/") break;
      if (sign === undefined)
        throw new XmlFault(
          "xml-cut-off",
          `The file ends inside <${name}: it was cut off.`,
          this.at,
        );
      if (before === this.at) throw this.broken(`the tag <${name} is malformed`);
      this.attribute(attributes);
    }
    return { name, attributes, children: [], text: "" };
  }

  private attribute(attributes: Map<string, string>): void {
    const key = this.name("an attribute");
    this.space();
    if (!this.takes("=")) throw this.broken(`the attribute ${key} has no value`);
    this.space();
    const quote = this.text[this.at];
    if (quote !== '"' && quote !== "'") throw this.broken(`the value of ${key} has no quotes`);
    const end = this.text.indexOf(quote, this.at + 1);
    if (end < 0)
      throw new XmlFault("xml-cut-off", `The file ends inside ${key}: it was cut off.`, this.at);
    const isBare = this.text.slice(this.at, end).includes("<");
    const value = this.unescaped(this.at + 1, end);
    if (isBare) throw this.broken(`the value of ${key} holds a bare <`);
    if (attributes.has(key)) throw this.broken(`the attribute ${key} stands twice`);
    if (attributes.size >= MOST_ATTRIBUTES) throw this.broken("a tag has too many attributes");
    attributes.set(key, value);
    this.at = end + 1;
  }

  private endTag(wanted: string): void {
    const from = this.at;
    const name = this.name("an end tag");
    this.space();
    if (!this.takes(">")) throw this.broken(`the tag </${name} is not closed`);
    if (name !== wanted) {
      this.at = from;
      throw this.broken(`</${name}> closes <${wanted}>`);
    }
  }

  /** Comments, instructions and the document type around the root. */
  private misc(): void {
    for (;;) {
      this.space();
      if (this.takes("<?")) this.upTo("?>");
      else if (this.takes("<!--")) this.upTo("-->");
      else if (this.text.startsWith("<!DOCTYPE", this.at)) this.documentType();
      else return;
    }
  }

  private documentType(): void {
    const end = this.text.indexOf(">", this.at);
    const brackets = this.text.indexOf("[", this.at);
    if (brackets >= 0 && (end < 0 || brackets < end))
      throw new XmlFault(
        "xml-declares",
        "The file declares entities of its own; such files are refused for safety.",
        brackets,
      );
    this.upTo(">");
  }

  private unescaped(from: Count, to: Count): string {
    const piece = this.text.slice(from, to);
    if (!piece.includes("&")) return piece;
    return piece.replace(/&([^;&\s]{0,12};?)/g, (_whole, body: string, index: number) =>
      this.entity(body, from + index),
    );
  }

  private entity(body: string, position: Count): string {
    const plain = body.endsWith(";") ? ENTITIES[body.slice(0, -1)] : undefined;
    if (plain !== undefined) return plain;
    const [, hex, decimal] = /^#(?:x([\da-fA-F]{1,6})|(\d{1,7}));$/.exec(body) ?? [];
    const code = hex === undefined ? Number(decimal ?? Number.NaN) : Number.parseInt(hex, 16);
    const isCharacter = code >= 0x9 && code <= 0x10ffff && !(code >= 0xd800 && code <= 0xdfff);
    if (isCharacter) return String.fromCodePoint(code);
    throw new XmlFault("xml-entity", `The file uses an unknown entity, &${body}.`, position);
  }

  private takes(sign: string): boolean {
    const isThere = this.text.startsWith(sign, this.at);
    if (isThere) this.at += sign.length;
    return isThere;
  }

  private upTo(sign: string): string {
    const end = this.text.indexOf(sign, this.at);
    if (end < 0)
      throw new XmlFault("xml-cut-off", `The file ends before ${sign}: it was cut off.`, this.at);
    const found = this.text.slice(this.at, end);
    this.at = end + sign.length;
    return found;
  }

  private space(): void {
    SPACE.lastIndex = this.at;
    SPACE.test(this.text);
    this.at = SPACE.lastIndex;
  }

  private name(what: string): string {
    NAME.lastIndex = this.at;
    const found = NAME.exec(this.text)?.[0];
    if (found === undefined) throw this.broken(`${what} has no name`);
    this.at = NAME.lastIndex;
    return found;
  }

  private broken(why: string): XmlFault {
    const line = this.text.slice(0, this.at).split("\n").length;
    return new XmlFault(
      "xml-broken",
      `The file is not well-formed XML: line ${line}, ${why}.`,
      this.at,
    );
  }
}

/**
 * First child of a name.
 * @param element - the parent
 * @param name - element name
 * @returns the child, if there is one
 */
export function childOf(element: XmlElement, name: string): XmlElement | undefined {
  return element.children.find((child) => child.name === name);
}

/**
 * All children of a name.
 * @param element - the parent
 * @param name - element name
 * @returns in document order
 */
export function childrenOf(element: XmlElement, name: string): readonly XmlElement[] {
  return element.children.filter((child) => child.name === name);
}

/**
 * Text of the first child of a name, spaces around it cut.
 * @param element - the parent
 * @param name - element name
 * @returns the text; undefined without such a child
 */
export function textOfChild(element: XmlElement, name: string): string | undefined {
  return childOf(element, name)?.text.trim();
}

/**
 * Whole number in the first child of a name.
 * @param element - the parent
 * @param name - element name
 * @returns the number; undefined without such a child or where it holds something else
 */
export function wholeOfChild(element: XmlElement, name: string): number | undefined {
  const text = textOfChild(element, name);
  return text !== undefined && /^[+-]?\d{1,9}$/.test(text) ? Number(text) : undefined;
}
