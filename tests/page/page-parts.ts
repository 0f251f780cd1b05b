import type { Locator, Page } from "playwright-core";

/** The parts of the page that the tests handle, by what a user calls them. */
export interface PageParts {
  readonly chord: Locator;
  readonly melody: Locator;
  /** The notes of the voicing in view, low to high, as the page writes them. */
  readonly stack: Locator;
  readonly reason: Locator;
  readonly map: Locator;
  /** Place of the map in view, in words. */
  readonly place: Locator;
  readonly problems: Locator;
  /** What a screen reader was told last. */
  readonly spoken: Locator;
  readonly token: (playerId: string) => Locator;
  readonly button: (name: string | RegExp) => Locator;
  readonly choice: (name: string | RegExp) => Locator;
}

/**
 * Finds the page's parts.
 * @param page - the page
 * @returns locators
 */
export function partsOf(page: Page): PageParts {
  return {
    chord: page.getByRole("textbox", { name: "Chord", exact: true }),
    melody: page.getByRole("textbox", { name: /^Melody/ }),
    stack: page.locator(".stack-words"),
    reason: page.getByTestId("reason"),
    map: page.getByTestId("map"),
    place: page.locator(".map-place"),
    problems: page.getByRole("alert"),
    spoken: page.getByTestId("spoken"),
    token: (playerId) => page.locator(`[data-player="${playerId}"][role="button"]`),
    button: (name) => page.getByRole("button", { name }),
    choice: (name) => page.getByRole("radio", { name }),
  };
}

/** The first visit's answer: F13 under D5, the best of six notes over two octaves and a sixth. */
export const firstStack = "F2 A3 C4 E♭4 G4 D5";

/**
 * Waits until a part of the page says something.
 * @param part - the part
 * @param text - what it must contain
 */
export async function says(part: Locator, text: string | RegExp): Promise<void> {
  await part.filter({ hasText: text }).first().waitFor();
}

/** Left and top edge of an element, CSS pixels. */
export async function cornerOf(part: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const box = await part.boundingBox();
  if (box === null) throw new Error("the element is not on the page");
  return box;
}

/**
 * Makes the page one of a browser that does not ask where a file goes: a test cannot answer it.
 * @param page - the page
 */
export async function withoutFilePicker(page: Page): Promise<void> {
  await page.evaluate(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
}
