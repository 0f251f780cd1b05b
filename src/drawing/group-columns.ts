/**
 * Shares groups out over columns, order kept, so that the tallest column is as short as it can be.
 * @param groups - groups in reading order, each a list of rows
 * @param columns - how many columns there are at most, 1 or more
 * @returns for each column its groups; no column is empty
 */
export function groupColumns<T>(
  groups: readonly (readonly T[])[],
  columns: number,
): readonly (readonly (readonly T[])[])[] {
  if (groups.length === 0) return [];
  if (columns <= 1) return [groups];
  const splits = groups.map((_, index) => {
    const rest = groupColumns(groups.slice(index + 1), columns - 1);
    return [groups.slice(0, index + 1), ...rest];
  });
  return splits.reduce((best, next) => (tallest(next) < tallest(best) ? next : best));
}

function tallest<T>(columns: readonly (readonly (readonly T[])[])[]): number {
  return Math.max(
    ...columns.map((groups) => groups.reduce((rows, group) => rows + group.length, 0)),
  );
}
