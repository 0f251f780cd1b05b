/**
 * A file's name that tells what is in it and is safe on every system.
 * @param words - what it holds, as typed by the user
 * @param ending - without the dot
 * @returns such as "hornweave-F13-D5-sustained.wav"
 */
export function fileNameOf(words: readonly string[], ending: string): string {
  const safe = words.map((word) =>
    word
      .replaceAll(/[#♯]/g, "-sharp-")
      .replaceAll("♭", "b")
      .replaceAll("/", "-over-")
      .replaceAll(/[^\p{Letter}\p{Number}+]+/gu, "-")
      .replaceAll(/^-+|-+$/g, "")
      .slice(0, 60),
  );
  return `${["hornweave", ...safe.filter((word) => word !== "")].join("-")}.${ending}`;
}

/**
 * Gives the user a file to keep: the browser downloads it.
 * @param content - text, bytes, or a blob that knows its type
 * @param fileName - its name
 * @param type - media type, such as "audio/wav"
 */
export function handOver(
  content: string | Uint8Array | Blob,
  fileName: string,
  type: string,
): void {
  const blob =
    content instanceof Blob
      ? content
      : new Blob([content as string | Uint8Array<ArrayBuffer>], { type });
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser reads the file after the press; a minute is plenty.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
