import { useLayoutEffect, useRef } from "react";
import { showPane } from "./actions/pane.ts";
import { Choice } from "./parts/choice.tsx";
import type { Pane } from "./state/pane.ts";
import { usePage } from "./store.ts";

const panes: readonly { value: Pane; text: string; meaning: string }[] = [
  { value: "chord", text: "One chord", meaning: "One chord under one note: every texture of it" },
  { value: "phrase", text: "Phrase", meaning: "A melody with its changes, voiced note by note" },
];

/** The switch that had the focus is gone with its view; the next one takes it up. */
let isFocusDue = false;

/** One chord, or a whole phrase. */
export function ViewSwitch() {
  const pane = usePage((state) => state.pane);
  const place = useRef<HTMLSpanElement>(null);
  useLayoutEffect(() => {
    if (!isFocusDue) return;
    isFocusDue = false;
    place.current?.querySelector<HTMLElement>('[aria-checked="true"]')?.focus();
  }, []);
  return (
    <span ref={place} className="view-switch">
      <Choice
        label="View"
        options={panes}
        value={pane}
        onChange={(next) => {
          isFocusDue = true;
          showPane(next);
        }}
      />
    </span>
  );
}
