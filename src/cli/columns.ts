/**
 * Lays rows out in columns for people to read: numbers to the right, words to the left.
 * @param rows - cells as text; the first row is the heading
 * @returns lines without trailing spaces, ending in a line break
 */
export function inColumns(rows: readonly (readonly string[])[]): string {
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(...rows.map((row) => [...(row[column] ?? "")].length)),
  );
  const body = rows.slice(1);
  const isNumber = widths.map(
    (_, column) =>
      body.length > 0 && body.every((row) => /^([−-]?[\d.]+|)$/.test(row[column] ?? "")),
  );
  return rows.map((row) => `${row.map(padded).join("  ").trimEnd()}\n`).join("");

  function padded(cell: string, column: number): string {
    const space = " ".repeat(Math.max(0, (widths[column] ?? 0) - [...cell].length));
    return isNumber[column] === true ? space + cell : cell + space;
  }
}
