/**
 * Where in a file something stands, for people.
 * @param path - keys and indices from the top
 * @returns such as "inquiries[0].dynamic"; long keys are cut
 */
export function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((part) => (typeof part === "number" ? `[${part}]` : `.${String(part).slice(0, 40)}`))
    .join("")
    .replace(/^\./, "");
}
