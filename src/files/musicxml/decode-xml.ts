import { fail, ok, type Result } from "../../base/index.ts";

/** Encodings that are read, by the names that files give them. Source: WHATWG Encoding. */
const ENCODINGS: Readonly<Record<string, string>> = Object.freeze({
  "utf-8": "utf-8",
  utf8: "utf-8",
  "us-ascii": "utf-8",
  "utf-16": "utf-16le",
  "utf-16le": "utf-16le",
  "utf-16be": "utf-16be",
  "iso-8859-1": "windows-1252",
  "windows-1252": "windows-1252",
});

/**
 * The text of an XML document: by its byte order mark, else by what its head declares, else UTF-8.
 * @param bytes - the document
 * @returns the text, or the problem "xml-encoding" where the bytes are not in that encoding
 * @source W3C XML 1.0, fifth edition, appendix F
 */
export function decodeXml(bytes: Uint8Array): Result<string> {
  const label = encodingOf(bytes);
  const encoding = ENCODINGS[label.toLowerCase()];
  if (encoding === undefined)
    return fail(
      "xml-encoding",
      `The file is written in "${label.slice(0, 40)}", which cannot be read; save it as UTF-8.`,
    );
  try {
    return ok(new TextDecoder(encoding, { fatal: true }).decode(bytes));
  } catch {
    return fail(
      "xml-encoding",
      `The file says that it is written in ${label}, but its bytes are not; save it as UTF-8.`,
    );
  }
}

function encodingOf(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  if (first === 0x3c && second === 0) return "utf-16le";
  if (first === 0 && second === 0x3c) return "utf-16be";
  const head = String.fromCharCode(...bytes.subarray(0, 200));
  return (
    /^(?:\u00ef\u00bb\u00bf)?<\?xml[^>]*\bencoding\s*=\s*["']([^"']*)["']/.exec(head)?.[1] ??
    "utf-8"
  );
}
