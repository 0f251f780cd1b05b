/** What the page shows: one chord and its map, or a phrase. */
export type Pane = "chord" | "phrase";

const place = "hornweave-pane";

/**
 * What was shown when the page was left.
 * @returns one chord, when nothing is remembered or storage is refused
 */
export function storedPane(): Pane {
  try {
    return localStorage.getItem(place) === "phrase" ? "phrase" : "chord";
  } catch {
    return "chord";
  }
}

/**
 * Remembers what is shown, where the browser allows.
 * @param pane - one chord, or a phrase
 */
export function rememberPane(pane: Pane): void {
  try {
    localStorage.setItem(place, pane);
  } catch {
    // A refused storage costs the memory of the choice, nothing else.
  }
}
