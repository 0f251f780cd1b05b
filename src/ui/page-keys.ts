import { useEffect } from "react";
import { hearView, stopSound } from "./actions/hear.ts";
import { takeAgain, takeBack } from "./actions/steps.ts";

/** Keys that work anywhere on the page: undo, redo, stop, again. */
export function usePageKeys(): void {
  useEffect(() => {
    const keyed = (event: KeyboardEvent) => {
      if (event.key === "Escape") stopSound();
      // With nothing in focus, Space sounds the last way again.
      if (event.key === " " && event.target === document.body) {
        event.preventDefault();
        hearView("again");
      }
      const isCommand = (event.ctrlKey || event.metaKey) && !event.altKey;
      if (!isCommand) return;
      const key = event.key.toLowerCase();
      if (key !== "z" && key !== "y") return;
      event.preventDefault();
      if (key === "y" || event.shiftKey) takeAgain();
      else takeBack();
    };
    addEventListener("keydown", keyed);
    return () => removeEventListener("keydown", keyed);
  }, []);
}
