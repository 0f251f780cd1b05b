import { useState } from "react";
import { nameKept, noteKept } from "../actions/keep.ts";
import { endTyping } from "../actions/steps.ts";
import type { Kept } from "../state/session.ts";

/** The kept voicing's name, to be changed in place. */
export function NameField({ kept }: { readonly kept: Kept }) {
  const [text, setText] = useState<string | null>(null);
  const settle = () => {
    const name = text?.trim() ?? "";
    setText(null);
    if (name !== "" && name !== kept.name) nameKept(kept.letter, name);
    endTyping();
  };
  return (
    <input
      className="kept-name"
      aria-label={`Name of ${kept.letter}`}
      value={text ?? kept.name}
      maxLength={40}
      onChange={(event) => setText(event.target.value)}
      onBlur={settle}
      onKeyDown={(event) => {
        if (event.key === "Enter") event.currentTarget.blur();
      }}
    />
  );
}

/** Longest note beside a kept voicing, characters. */
const longestNote = 500;

/** What the user writes beside a kept voicing; grows with it. Shift and Enter begin a new line. */
export function NoteField({ kept }: { readonly kept: Kept }) {
  const [text, setText] = useState<string | null>(null);
  const settle = () => {
    const note = text?.trim() ?? kept.note ?? "";
    setText(null);
    if (note !== (kept.note ?? "")) noteKept(kept.letter, note);
    endTyping();
  };
  return (
    <textarea
      className="kept-note"
      aria-label={`Note beside ${kept.letter}`}
      placeholder="Note"
      rows={1}
      value={text ?? kept.note ?? ""}
      maxLength={longestNote}
      onChange={(event) => setText(event.target.value)}
      onBlur={settle}
      onKeyDown={(event) => {
        if (event.key !== "Enter" || event.shiftKey) return;
        event.preventDefault();
        event.currentTarget.blur();
      }}
    />
  );
}
