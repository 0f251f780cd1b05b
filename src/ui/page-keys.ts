import { useEffect } from "react";
import { stopSound } from "./actions/hear.ts";
import { takeAgain, takeBack } from "./actions/steps.ts";

/** Keys that work anywhere on the page: undo, redo, stop. */
export function usePageKeys(): void {
  useEffect(() => {
    const keyed = (event: KeyboardEvent) => {
      if (event.key === "Escape") stopSound();
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
