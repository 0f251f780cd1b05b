import type { SectionId } from "../../band/index.ts";

/** The columns of a weaving draft, left to right. */
export const draftSections: readonly SectionId[] = ["trumpets", "trombones", "saxes"];

/** Which sections sound each note of a texture, top note first. */
export type DraftRows = readonly ReadonlySet<SectionId>[];

/**
 * The weave of a voicing: one row a distinct note, top first, with the sections that sound it.
 * @param sounding - section and MIDI note number of every sounding player
 * @returns the rows
 */
export function draftRows(
  sounding: readonly { readonly section: SectionId; readonly pitch: number }[],
): DraftRows {
  const rows = new Map<number, Set<SectionId>>();
  for (const { section, pitch } of sounding) {
    const row = rows.get(pitch) ?? new Set<SectionId>();
    row.add(section);
    rows.set(pitch, row);
  }
  return [...rows.entries()].sort(([a], [b]) => b - a).map(([, row]) => row);
}

/** A rectangle, CSS pixels. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The marks of one section in a draft, as path data.
 * @param rows - the weave
 * @param section - whose column
 * @param box - where the draft lies
 * @returns path data; empty when the section rests
 */
export function draftPath(rows: DraftRows, section: SectionId, box: Box): string {
  const column = draftSections.indexOf(section);
  const across = box.width / draftSections.length;
  const step = box.height / Math.max(1, rows.length);
  const tall = Math.min(0.6 * step, 6);
  const wide = across * 0.8;
  const x = round(box.x + column * across + (across - wide) / 2);
  return rows
    .map((row, index) => {
      if (!row.has(section)) return "";
      const y = round(box.y + index * step + (step - tall) / 2);
      return `M${x},${y}h${round(wide)}v${round(tall)}h${round(-wide)}z`;
    })
    .join("");
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
