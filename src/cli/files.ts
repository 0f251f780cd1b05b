import { readFileSync, writeFileSync } from "node:fs";
import { fail, ok, type Result } from "../base/index.ts";

/**
 * Reads a file.
 * @param path - where it lies
 * @returns its bytes, or the problem: "file-not-found", "file-not-read"
 */
export function readBytes(path: string): Result<Uint8Array> {
  try {
    return ok(readFileSync(path));
  } catch (error) {
    const isMissing = (error as NodeJS.ErrnoException).code === "ENOENT";
    return isMissing
      ? fail("file-not-found", `There is no file ${path}.`)
      : fail("file-not-read", `${path} could not be read (${reasonOf(error)}).`);
  }
}

/**
 * Writes a file.
 * @param path - where to
 * @param content - bytes or text, the latter as UTF-8
 * @returns nothing, or the problem "file-not-written"
 */
export function writeFile(path: string, content: Uint8Array | string): Result<void> {
  try {
    writeFileSync(path, content);
    return ok(undefined);
  } catch (error) {
    return fail("file-not-written", `${path} could not be written (${reasonOf(error)}).`);
  }
}

/**
 * What an operating system's error says.
 * @param error - what was thrown
 * @returns its words
 */
export const reasonOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/**
 * The kind of a file by the end of its name.
 * @param path - "band.musicxml"
 * @returns "musicxml"; in small letters, empty where there is none
 */
export function kindOf(path: string): string {
  return /\.([a-z0-9]+)$/i.exec(path)?.[1]?.toLowerCase() ?? "";
}

/**
 * Another file beside one.
 * @param path - "band.wav"
 * @param mark - "alto1"
 * @returns "band-alto1.wav"
 */
export const beside = (path: string, mark: string): string =>
  path.replace(/(\.[a-z0-9]+)?$/i, (kind) => `-${mark}${kind}`);
