import type { Theme } from "./page-state.ts";

const place = "hornweave-theme";

/**
 * The theme chosen at an earlier visit.
 * @returns the choice; "system" when there is none or storage is refused
 */
export function storedTheme(): Theme {
  try {
    const stored = localStorage.getItem(place);
    return stored === "light" || stored === "dark" ? stored : "system";
  } catch {
    return "system";
  }
}

/**
 * Shows a theme and remembers it where the browser allows.
 * @param theme - light, dark, or whatever the system prefers
 */
export function showTheme(theme: Theme): void {
  if (theme === "system") delete document.documentElement.dataset["theme"];
  else document.documentElement.dataset["theme"] = theme;
  try {
    localStorage.setItem(place, theme);
  } catch {
    // A refused storage costs the memory of the choice, nothing else.
  }
}
