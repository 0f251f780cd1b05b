import { createStore } from "zustand";

/** What the page's live region says; a number makes the same words news again. */
export const announcement = createStore<{ readonly text: string; readonly count: number }>()(
  () => ({ text: "", count: 0 }),
);

/**
 * Has a screen reader say something, without moving the focus.
 * @param text - one or a few short sentences
 */
export function announce(text: string): void {
  announcement.setState(({ count }) => ({ text, count: count + 1 }));
}
