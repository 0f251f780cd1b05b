import { useStore } from "zustand";
import { announcement } from "../actions/announce.ts";

/** Where the page speaks to a screen reader without moving the focus. */
export function LiveRegion() {
  const { text, count } = useStore(announcement);
  // A trailing mark that is not spoken makes the same words news again.
  return (
    <p className="unseen" role="status" aria-live="polite" data-testid="spoken">
      {text}
      {count % 2 === 1 ? "\u200b" : ""}
    </p>
  );
}
