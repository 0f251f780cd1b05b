import { fail, ok, type Count, type Result } from "../../base/index.ts";
import { inflateBounded } from "../bounded-inflate.ts";

/** Most bytes a file may have once unpacked. */
const MOST_UNPACKED: Count = 32_000_000;
const MOST_ENTRIES: Count = 1000;
const END_SIZE = 22;
const LONGEST_COMMENT = 0xffff;
const SIGNATURE = Object.freeze({ end: 0x06054b50, entry: 0x02014b50, file: 0x04034b50 });

/** A line of a zip's directory. */
interface Entry {
  readonly name: string;
  readonly method: number;
  readonly packed: Count;
  readonly size: Count;
  readonly at: Count;
}

/**
 * Unpacks the first file of a zip that fits. Nothing else is unpacked, and unpacking stops at a
 * bound whatever the zip claims about itself.
 * @param bytes - the zip
 * @param fits - whether a name is the one wanted
 * @returns the file, undefined where none fits, or the problem: "mxl-broken", "mxl-too-large"
 * @source PKWARE, .ZIP File Format Specification, sections 4.3.7, 4.3.12 and 4.3.16
 */
export function zipEntry(
  bytes: Uint8Array,
  fits: (name: string) => boolean,
): Result<Uint8Array | undefined> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const entries = directory(view);
    if (entries === undefined) return broken();
    const entry = entries.find(({ name }) => fits(name));
    return entry === undefined ? ok(undefined) : unpacked(view, bytes, entry);
  } catch (fault) {
    // Reading past the end: a length in the zip is wrong.
    if (fault instanceof RangeError) return broken();
    throw fault;
  }
}

const broken = (): Result<never> =>
  fail("mxl-broken", "The zipped file is damaged or was cut off.");

function directory(view: DataView): readonly Entry[] | undefined {
  const end = endRecord(view);
  if (end === undefined) return undefined;
  const count = view.getUint16(end + 10, true);
  if (count > MOST_ENTRIES) return undefined;
  const entries: Entry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index += 1) {
    if (view.getUint32(at, true) !== SIGNATURE.entry) return undefined;
    const nameLength = view.getUint16(at + 28, true);
    entries.push({
      name: nameAt(view, at + 46, nameLength),
      method: view.getUint16(at + 10, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

/** The last record of a zip stands at its end, before a comment. */
function endRecord(view: DataView): Count | undefined {
  const last = view.byteLength - END_SIZE;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at -= 1)
    if (view.getUint32(at, true) === SIGNATURE.end) return at;
  return undefined;
}

function nameAt(view: DataView, at: Count, length: Count): string {
  if (at + length > view.byteLength) throw new RangeError("a zip name lies inside the zip");
  return new TextDecoder().decode(new Uint8Array(view.buffer, view.byteOffset + at, length));
}

function unpacked(view: DataView, bytes: Uint8Array, entry: Entry): Result<Uint8Array> {
  const { method, packed, size, at } = entry;
  if (size > MOST_UNPACKED || packed > MOST_UNPACKED) return tooLarge();
  if (view.getUint32(at, true) !== SIGNATURE.file) return broken();
  const from = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  if (from + packed > bytes.length) return broken();
  const content = bytes.subarray(from, from + packed);
  if (method === 0) return content.length === size ? ok(content) : broken();
  if (method !== 8) return broken();
  const inflated = inflateBounded(content, Math.min(MOST_UNPACKED, size));
  if (!inflated.ok) return inflated.why === "too-large" ? tooLarge() : broken();
  return inflated.bytes.length === size ? ok(inflated.bytes) : broken();
}

const tooLarge = (): Result<never> =>
  fail(
    "mxl-too-large",
    `The zipped score would take more than it says or than ${MOST_UNPACKED / 1e6} MB unpacked.`,
  );
