import { ByteReader } from "./byte-reader.ts";

/** What is needed of a font's CFF table: its glyphs as programs, and the parts they share. */
export interface CffTable {
  readonly glyphs: readonly Uint8Array[];
  readonly globalParts: readonly Uint8Array[];
  readonly localParts: readonly Uint8Array[];
}

/** Operators of a dictionary. Source: Adobe Technical Note 5176, tables 9 and 23. */
const operators = { charStrings: 17, private: 18, localParts: 19 };

/**
 * Reads the CFF table of an OpenType font with one set of glyphs.
 * @param bytes - the table
 * @returns glyph programs in order of glyph number
 * @throws RangeError for a table without glyphs
 * @source Adobe Technical Note 5176, The Compact Font Format Specification, 2003
 */
export function readCff(bytes: Uint8Array): CffTable {
  const reader = new ByteReader(bytes);
  const names = readIndex(reader, reader.u8(2));
  const tops = readIndex(reader, names.end);
  const texts = readIndex(reader, tops.end);
  const globals = readIndex(reader, texts.end);
  const top = readDictionary(tops.items[0] ?? new Uint8Array());
  const [glyphsAt] = top.get(operators.charStrings) ?? [];
  if (glyphsAt === undefined) throw new RangeError("a font needs glyphs, got none");
  const [size = 0, at = 0] = top.get(operators.private) ?? [];
  const own = readDictionary(reader.part(at, at + size));
  const [partsAt] = own.get(operators.localParts) ?? [];
  return {
    glyphs: readIndex(reader, glyphsAt).items,
    globalParts: globals.items,
    localParts: partsAt === undefined ? [] : readIndex(reader, at + partsAt).items,
  };
}

/** A row of byte strings. Source: 5176, section 5. */
function readIndex(reader: ByteReader, at: number): { items: Uint8Array[]; end: number } {
  const count = reader.u16(at);
  if (count === 0) return { items: [], end: at + 2 };
  const size = reader.u8(at + 2);
  const data = at + 2 + (count + 1) * size;
  const offset = (index: number) => data + reader.sized(at + 3 + index * size, size);
  const items = Array.from({ length: count }, (_, index) =>
    reader.part(offset(index), offset(index + 1)),
  );
  return { items, end: offset(count) };
}

/** Numbers before each operator; two-byte operators count from 256. Source: 5176, section 4. */
function readDictionary(bytes: Uint8Array): ReadonlyMap<number, readonly number[]> {
  const reader = new ByteReader(bytes);
  const entries = new Map<number, readonly number[]>();
  let operands: number[] = [];
  for (let at = 0; at < bytes.length;) {
    const byte = reader.u8(at);
    if (byte <= 21) {
      const isLong = byte === 12;
      entries.set(isLong ? 256 + reader.u8(at + 1) : byte, operands);
      operands = [];
      at += isLong ? 2 : 1;
    } else {
      const [value, length] = dictionaryNumber(reader, at);
      operands.push(value);
      at += length;
    }
  }
  return entries;
}

/** A number and how many bytes it takes; fractions are skipped, none is needed here. */
function dictionaryNumber(reader: ByteReader, at: number): readonly [number, number] {
  const byte = reader.u8(at);
  if (byte === 28) return [reader.i16(at + 1), 3];
  if (byte === 29) return [reader.u32(at + 1) | 0, 5];
  if (byte === 30) {
    let end = at + 1;
    while ((reader.u8(end) & 15) !== 15 && reader.u8(end) >> 4 !== 15) end += 1;
    return [0, end + 1 - at];
  }
  return smallNumber(reader, at);
}

/**
 * Numbers of one and two bytes, alike in dictionaries and in glyph programs.
 * @param reader - the bytes
 * @param at - a byte from 32 to 254
 * @returns the number and how many bytes it takes
 * @source 5176, table 3
 */
export function smallNumber(reader: ByteReader, at: number): readonly [number, number] {
  const byte = reader.u8(at);
  if (byte <= 246) return [byte - 139, 1];
  const next = reader.u8(at + 1);
  return byte <= 250 ? [(byte - 247) * 256 + next + 108, 2] : [-(byte - 251) * 256 - next - 108, 2];
}
