import { fail, ok, type Count, type Result } from "../../base/index.ts";
import { decodeXml } from "./decode-xml.ts";
import { readMusicXml, type ScoreReading } from "./read-musicxml.ts";
import { childOf, childrenOf, readXml } from "./xml-reader.ts";
import { zipEntry } from "./zip-entry.ts";

/** Largest file that is opened, in bytes. */
const MOST_FILE_BYTES: Count = 32_000_000;

/**
 * Reads a MusicXML file as it lies on disk: plain (.musicxml, .xml) in UTF-8, UTF-16 or Latin-1, or
 * zipped (.mxl). Sizes are bounded before and while anything is unpacked.
 * @param bytes - the file
 * @returns the score with remarks, or the problem: "file-too-large", "mxl-broken", "mxl-too-large",
 *   "mxl-no-score", "xml-encoding", or those of readMusicXml
 * @source W3C MusicXML 4.0, container file of compressed files
 */
export function readScoreFile(bytes: Uint8Array): Result<ScoreReading> {
  if (bytes.length > MOST_FILE_BYTES)
    return fail("file-too-large", `The file is larger than ${MOST_FILE_BYTES / 1e6} MB.`);
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  const document = isZip ? scoreInZip(bytes) : ok(bytes);
  if (!document.ok) return document;
  const text = decodeXml(document.value);
  return text.ok ? readMusicXml(text.value) : text;
}

const CONTAINER = "META-INF/container.xml";

/** The score that the container names; without one, the first that looks like a score. */
function scoreInZip(bytes: Uint8Array): Result<Uint8Array> {
  const container = zipEntry(bytes, (name) => name === CONTAINER);
  if (!container.ok) return container;
  const named = container.value && rootPath(container.value);
  const score = zipEntry(bytes, (name) =>
    named === undefined
      ? /\.(musicxml|xml)$/i.test(name) && !name.startsWith("META-INF/")
      : name === named,
  );
  if (!score.ok) return score;
  if (score.value === undefined)
    return fail("mxl-no-score", "The zipped file holds no MusicXML score.");
  return ok(score.value);
}

function rootPath(container: Uint8Array): string | undefined {
  const text = decodeXml(container);
  const document = text.ok ? readXml(text.value) : text;
  if (!document.ok) return undefined;
  const list = childOf(document.value, "rootfiles");
  const files = list === undefined ? [] : childrenOf(list, "rootfile");
  return files[0]?.attributes.get("full-path");
}
