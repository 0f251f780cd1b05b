import { fail, ok, type Result } from "../base/index.ts";

/**
 * The text of a file without markup: by its byte order mark, else UTF-8, else Latin-1, as old files
 * have it.
 * @param bytes - the file
 * @returns the text, or the problem "file-not-text" where the bytes are none
 * @source WHATWG Encoding
 */
export function decodeText(bytes: Uint8Array): Result<string> {
  const text = decoded(bytes);
  // Control signs other than tabs and line ends stand in no text.
  // eslint-disable-next-line no-control-regex
  if (text === undefined || /[\u0000-\u0008\u000e-\u001f]/.test(text))
    return fail("file-not-text", "The file holds no text that can be read.");
  return ok(text);
}

function decoded(bytes: Uint8Array): string | undefined {
  const [first, second] = bytes;
  const isLittle = first === 0xff && second === 0xfe;
  const isBig = first === 0xfe && second === 0xff;
  const encodings = isLittle ? ["utf-16le"] : isBig ? ["utf-16be"] : ["utf-8", "windows-1252"];
  for (const encoding of encodings)
    try {
      return new TextDecoder(encoding, { fatal: true }).decode(bytes);
    } catch {
      continue;
    }
  return undefined;
}
