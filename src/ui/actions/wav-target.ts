import type { ByteSink } from "../../files/index.ts";
import { handOver } from "./hand-over.ts";

/** Where the bytes of a recording go while they are made. */
export interface WavTarget {
  readonly write: ByteSink;
  /** The file is whole: it appears at its place. */
  readonly finish: () => Promise<void>;
  /** It will not be: nothing is left behind. */
  readonly giveUp: () => Promise<void>;
}

/** The part of the browser that lets the user say where a file goes, where there is one. */
interface FilePicker {
  readonly showSaveFilePicker?: (options: {
    readonly suggestedName: string;
    readonly types: readonly unknown[];
  }) => Promise<FileSystemFileHandle>;
}

const wavType = { description: "WAV recording", accept: { "audio/wav": [".wav"] } };

/**
 * Lets the user say where a recording goes, where the browser asks; else it is gathered and
 * downloaded when it is whole. Call it from the handler of a click or a key.
 * @param name - what the file is called
 * @returns where to write; null when the user would rather not
 */
export async function openWavTarget(name: string): Promise<WavTarget | null> {
  const { showSaveFilePicker } = window as unknown as FilePicker;
  if (showSaveFilePicker === undefined) return gathered(name);
  try {
    const handle = await showSaveFilePicker.call(window, {
      suggestedName: name,
      types: [wavType],
    });
    return streamed(await handle.createWritable());
  } catch (reason) {
    const isRefusal = reason instanceof DOMException && reason.name === "AbortError";
    return isRefusal ? null : gathered(name);
  }
}

function streamed(file: FileSystemWritableFileStream): WavTarget {
  return {
    write: (bytes) => file.write(bytes as Uint8Array<ArrayBuffer>),
    finish: () => file.close(),
    giveUp: () => file.abort(),
  };
}

function gathered(name: string): WavTarget {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  return {
    write: (bytes) => void pieces.push(bytes as Uint8Array<ArrayBuffer>),
    finish: () => {
      handOver(new Blob(pieces, { type: "audio/wav" }), name, "audio/wav");
      return Promise.resolve();
    },
    giveUp: () => Promise.resolve(),
  };
}
