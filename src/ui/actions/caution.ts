const place = "hornweave-headphones";

/** Said once, before the first sound of the first visit. */
export const headphoneCaution = "Starts quietly; mind the volume on headphones.";

/**
 * Whether the caution was given at an earlier visit.
 * @returns false where storage is refused: once too often is better than never
 */
export function isCautionKnown(): boolean {
  try {
    return localStorage.getItem(place) === "known";
  } catch {
    return false;
  }
}

/** Remembers that the caution was given, where the browser allows. */
export function rememberCaution(): void {
  try {
    localStorage.setItem(place, "known");
  } catch {
    // A refused storage has the caution said again at the next visit, nothing else.
  }
}
