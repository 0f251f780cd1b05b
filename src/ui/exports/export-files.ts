import { reportOn, textOf } from "../../explore/index.ts";
import type { ScoredVoicing } from "../../files/index.ts";
import { layoutVoicing } from "../../notation/index.ts";
import { fileNameOf, handOver } from "../actions/hand-over.ts";
import { thisOne } from "../actions/sound-piece.ts";
import { nameWords, type ExportItem } from "./export-items.ts";

/** Kinds of file that are made at once. */
export type FileKind = "musicxml" | "mid" | "svg" | "png";

/** What a file of the voicings shows. */
export interface FileLook {
  /** MusicXML: parts as players read them, or all at concert pitch. */
  readonly pitch: "written" | "concert";
  /** Pictures: one grand staff, or a staff for each player, at concert pitch or as they read it. */
  readonly staves: PictureStaves;
}

export type PictureStaves = "grand" | "players-concert" | "players-written";

/** Pixels of a PNG to a unit of the drawing. */
const pngScale = 2;

/**
 * Makes a file and hands it over.
 * @param kind - which kind
 * @param items - what is in it
 * @param look - what it shows
 * @returns what became of it, one sentence
 */
export async function saveFile(
  kind: FileKind,
  items: readonly ExportItem[],
  look: FileLook,
): Promise<string> {
  if (items.every(({ voicing }) => voicing.placements.length === 0))
    return "Nobody sounds in this voicing, so there is nothing to save.";
  const name = fileNameOf(nameWords(items), kind);
  try {
    const content = await contentOf(kind, items, look);
    handOver(content, name, content.type);
    return `Saved as ${name}.`;
  } catch {
    return kind === "svg" || kind === "png"
      ? "The picture could not be drawn: reload the page, then save it again."
      : "The file could not be made: reload the page, then save it again.";
  }
}

async function contentOf(
  kind: FileKind,
  items: readonly ExportItem[],
  { pitch, staves }: FileLook,
): Promise<Blob> {
  if (kind === "svg" || kind === "png") return pictureOf(kind, items, staves);
  const { midiOf, musicXmlOf } = await import("../../files/index.ts");
  const scored = items.map(scoredVoicing);
  const [first] = items;
  const title = items.length === 1 && first !== undefined ? titleOf(first) : "Kept voicings";
  if (kind === "mid") {
    const bytes = midiOf(scored, { title }) as Uint8Array<ArrayBuffer>;
    return new Blob([bytes], { type: "audio/midi" });
  }
  const text = musicXmlOf(scored, { title, pitch });
  return new Blob([text], { type: "application/vnd.recordare.musicxml+xml" });
}

function scoredVoicing({ letter, name, voicing, question }: ExportItem): ScoredVoicing {
  return {
    voicing,
    chord: question.chord,
    dynamic: question.dynamic,
    ...(letter === thisOne ? {} : { rehearsal: letter }),
    ...(name === "" ? {} : { words: name }),
  };
}

function titleOf({ letter, name, question }: ExportItem): string {
  return letter === thisOne ? question.chord.display : name;
}

const layouts = {
  grand: { view: "grand", pitch: "concert" },
  "players-concert": { view: "by-player", pitch: "concert" },
  "players-written": { view: "by-player", pitch: "written" },
} as const;

async function pictureOf(
  kind: "svg" | "png",
  items: readonly ExportItem[],
  staves: PictureStaves,
): Promise<Blob> {
  const { drawFigure } = await import("../../drawing/index.ts");
  const parts = items.map(({ letter, name, voicing, question }) => ({
    layout: layoutVoicing(voicing, { chord: question.chord, ...layouts[staves] }),
    caption: letter === thisOne ? "" : `${letter}  ${name}`,
  }));
  const title = items
    .map((item) => (item.letter === thisOne ? titleOf(item) : `${item.letter} ${item.name}`))
    .join(", ");
  const figure = await drawFigure(parts, title);
  return kind === "png" ? figure.png(pngScale) : new Blob([figure.svg], { type: "image/svg+xml" });
}

/**
 * Puts voicings on the clipboard as plain text.
 * @param items - in order
 * @returns what became of it, one sentence
 */
export async function copyText(items: readonly ExportItem[]): Promise<string> {
  const text = items.map(itemText).join("\n\n");
  try {
    await navigator.clipboard.writeText(text);
    return items.length === 1 ? "Copied as text." : `Copied ${items.length} voicings as text.`;
  } catch {
    return "The browser refused the clipboard: allow it for this page, then copy again.";
  }
}

function itemText({ letter, name, note, voicing, question }: ExportItem): string {
  const head = letter === thisOne ? [] : [`${letter}: ${name}`];
  const foot = note === "" ? [] : [`Note: ${note}`];
  return [...head, textOf(reportOn(voicing, question), question), ...foot].join("\n");
}
