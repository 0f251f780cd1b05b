/**
 * Breaks words into short lines.
 * @param text - one sentence or name
 * @param most - most characters a line; a longer word stands alone
 * @returns lines
 */
export function wrapWords(text: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
