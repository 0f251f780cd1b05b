import { ByteReader } from "./byte-reader.ts";
import { readCff, type CffTable } from "./cff-table.ts";
import { glyphOutline } from "./glyph-program.ts";
import type { OutlineStep } from "./pen.ts";

/** A font whose characters can be drawn as shapes. */
export interface OutlineFont {
  readonly unitsPerEm: number;
  /** The glyph of a character, or undefined where the font has none. */
  readonly glyphOf: (codePoint: number) => number | undefined;
  /** How far a glyph moves on, font units. */
  readonly advanceOf: (glyph: number) => number;
  readonly outlineOf: (glyph: number) => readonly OutlineStep[];
}

/**
 * Reads an OpenType font with CFF outlines.
 * @param bytes - the file
 * @returns its characters
 * @throws RangeError when it is no such file
 * @source ISO/IEC 14496-22 (Open Font Format): head, hhea, hmtx, cmap formats 4 and 12
 */
export function readOutlineFont(bytes: Uint8Array): OutlineFont {
  const file = new ByteReader(bytes);
  const tables = tablesOf(file);
  const table = (tag: string): ByteReader => {
    const found = tables.get(tag);
    if (found === undefined) throw new RangeError(`the font has no table “${tag.trim()}”`);
    return new ByteReader(found);
  };
  const metrics = table("hmtx");
  const wide = table("hhea").u16(34);
  const outlines: CffTable = readCff(table("CFF ").bytes);
  const known = new Map<number, readonly OutlineStep[]>();
  return {
    unitsPerEm: table("head").u16(18),
    glyphOf: characterMap(table("cmap")),
    advanceOf: (glyph) => metrics.u16(4 * Math.min(glyph, wide - 1)),
    outlineOf: (glyph) => {
      const outline = known.get(glyph) ?? glyphOutline(outlines, glyph);
      known.set(glyph, outline);
      return outline;
    },
  };
}

function tablesOf(file: ByteReader): ReadonlyMap<string, Uint8Array> {
  const tables = new Map<string, Uint8Array>();
  for (let index = 0; index < file.u16(4); index += 1) {
    const row = 12 + 16 * index;
    const tag = String.fromCharCode(...file.part(row, row + 4));
    const [at, length] = [file.u32(row + 8), file.u32(row + 12)];
    tables.set(tag, file.part(at, at + length));
  }
  return tables;
}

/** The largest of the font's maps from Unicode to glyphs. */
function characterMap(cmap: ByteReader): OutlineFont["glyphOf"] {
  const maps = Array.from({ length: cmap.u16(2) }, (_, index) => cmap.u32(4 + 8 * index + 4));
  const whole = maps.find((at) => cmap.u16(at) === 12);
  if (whole !== undefined) return groupedMap(cmap, whole);
  const basic = maps.find((at) => cmap.u16(at) === 4);
  if (basic === undefined) throw new RangeError("the font has no map of Unicode characters");
  return segmentedMap(cmap, basic);
}

function groupedMap(cmap: ByteReader, at: number): OutlineFont["glyphOf"] {
  const groups = cmap.u32(at + 12);
  return (codePoint) => {
    for (let group = 0; group < groups; group += 1) {
      const row = at + 16 + 12 * group;
      const [first, last] = [cmap.u32(row), cmap.u32(row + 4)];
      if (first <= codePoint && codePoint <= last) return cmap.u32(row + 8) + codePoint - first;
    }
    return undefined;
  };
}

function segmentedMap(cmap: ByteReader, at: number): OutlineFont["glyphOf"] {
  const twice = cmap.u16(at + 6);
  const [ends, starts] = [at + 14, at + 16 + twice];
  const [deltas, offsets] = [starts + twice, starts + 2 * twice];
  return (codePoint) => {
    for (let row = 0; row < twice; row += 2) {
      if (codePoint > cmap.u16(ends + row)) continue;
      const start = cmap.u16(starts + row);
      if (codePoint < start) return undefined;
      const offset = cmap.u16(offsets + row);
      const mapped =
        offset === 0 ? codePoint : cmap.u16(offsets + row + offset + 2 * (codePoint - start));
      const glyph = mapped === 0 ? 0 : (mapped + cmap.u16(deltas + row)) & 0xffff;
      return glyph === 0 ? undefined : glyph;
    }
    return undefined;
  };
}
