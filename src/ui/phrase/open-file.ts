import { createStore, useStore } from "zustand";
import { readMelodyFile } from "../../files/index.ts";
import type { Melody } from "../../theory/index.ts";
import { announce } from "../actions/announce.ts";
import { beginMelody } from "./new-phrase.ts";

/** What became of the last file. */
export interface FileNews {
  readonly name: string;
  readonly problems: readonly string[];
  readonly remarks: readonly string[];
}

const news = createStore<{ readonly last: FileNews | null }>()(() => ({ last: null }));

/** News of the last file that was opened; null until one was, or after it was put away. */
export function useFileNews(): FileNews | null {
  return useStore(news, (state) => state.last);
}

/** Puts the news away. */
export function closeNews(): void {
  news.setState({ last: null });
}

/** Endings of files that can be opened, as a file dialog wants them. */
export const melodyEndings = ".abc,.txt,.musicxml,.xml,.mxl";

interface Opened {
  readonly melody?: Melody;
  readonly problems: readonly string[];
  readonly remarks: readonly string[];
}

const refused = (...problems: readonly string[]): Opened => ({ problems, remarks: [] });

/** Opens a file with a melody; a phrase that is there stays a step back. */
export async function openMelodyFile(file: File): Promise<void> {
  const opened = await readFile(file).catch(() =>
    refused("The browser could not read this file; choose it again."),
  );
  const { melody, problems, remarks } = opened;
  if (melody !== undefined) beginMelody(melody);
  const isNews = problems.length > 0 || remarks.length > 0;
  news.setState({ last: isNews ? { name: file.name, problems, remarks } : null });
  announce(
    melody === undefined
      ? `${file.name} could not be opened. ${problems[0] ?? ""}`
      : `${file.name} is open.`,
  );
}

/** Largest file that is looked into, bytes. */
const mostBytes = 32_000_000;

async function readFile(file: File): Promise<Opened> {
  if (file.size > mostBytes) return refused("The file is too large for a melody.");
  const read = await readMelodyFile(new Uint8Array(await file.arrayBuffer()));
  if (!read.ok) return refused(...read.problems.map(({ message }) => message));
  const { melody, remarks } = read.value;
  return { melody, problems: [], remarks: [...new Set(remarks)] };
}
