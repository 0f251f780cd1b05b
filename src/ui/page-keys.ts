import { useEffect } from "react";
import { hearView, stopSound } from "./actions/hear.ts";
import { takeAgain, takeBack } from "./actions/steps.ts";

/** Keys that work anywhere on the page: undo, redo, stop, again. */
export function usePageKeys(): void {
  useEffect(() => {
    // Before anybody else hears the key: what closes on Escape must not keep the sound from ending.
    const stopped = (event: KeyboardEvent) => {
      if (event.key === "Escape") stopSound();
    };
    const keyed = (event: KeyboardEvent) => {
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
    addEventListener("keydown", stopped, true);
    addEventListener("keydown", keyed);
    return () => {
      removeEventListener("keydown", stopped, true);
      removeEventListener("keydown", keyed);
    };
  }, []);
}
