/** Longest name without its ending: what every system and most web mail take. */
const longest = 80;

/**
 * A file's name that tells what is in it and is safe on every system: plain letters, figures, hyphens.
 * @param words - what it holds, as typed by the user
 * @param ending - without the dot
 * @returns such as "hornweave-F13-D5-hit.wav"
 */
export function fileName(words: readonly string[], ending: string): string {
  const safe = words.map((word) =>
    word
      .replaceAll(/[♯#]/g, "-sharp-")
      .replaceAll("♭", "b")
      .replaceAll("/", "-over-")
      .replaceAll("ß", "ss")
      // Accents are taken off their letters: "ü" is "u".
      .normalize("NFKD")
      .replaceAll(/\p{Mark}/gu, "")
      .replaceAll(/[^A-Za-z0-9+]+/g, "-")
      .replaceAll(/^-+|-+$/g, ""),
  );
  const name = ["hornweave", ...safe.filter((word) => word !== "")].join("-");
  return `${name.slice(0, longest).replace(/-+$/, "")}.${ending}`;
}

/**
 * Downloads a file.
 * @param content - what is in it
 * @param name - what it is called
 */
export function handOver(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the file after the press; a minute is plenty.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
