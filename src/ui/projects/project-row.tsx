import { useRef, useState } from "react";
import type { StoredEntry } from "../../files/index.ts";
import { longestName } from "./open.ts";

/** One stored project and what can be done with it. */
export function ProjectRow(props: {
  readonly entry: StoredEntry;
  readonly isThis: boolean;
  /** When it was saved, in words. */
  readonly when: string;
  readonly onOpen: () => void;
  readonly onRename: (name: string) => void;
  readonly onCopy: () => void;
  readonly onRemove: () => void;
}) {
  const { entry, isThis, when, onOpen, onRename, onCopy, onRemove } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const row = useRef<HTMLLIElement>(null);
  const settle = (isMeant: boolean) => {
    if (typed !== null && isMeant) onRename(typed);
    setTyped(null);
  };
  const settleByKey = (isMeant: boolean) => {
    settle(isMeant);
    goOnFrom(row.current);
  };
  return (
    <li ref={row} className="project-row" aria-current={isThis || undefined}>
      <span className="project-words">
        {typed === null ? (
          <b>{entry.name}</b>
        ) : (
          <input
            autoFocus
            className="project-rename"
            aria-label={`New name of ${entry.name}`}
            value={typed}
            maxLength={longestName}
            onChange={(event) => setTyped(event.target.value)}
            onBlur={() => settle(true)}
            onKeyDown={(event) => {
              if (event.key === "Enter") settleByKey(true);
              if (event.key === "Escape") {
                event.stopPropagation();
                settleByKey(false);
              }
            }}
          />
        )}
        <span className="quiet">{isThis ? `on the page, saved ${when}` : `saved ${when}`}</span>
      </span>
      <span className="row project-acts">
        {!isThis && <Act text="Open" of={entry.name} onPress={onOpen} />}
        <Act
          text="Rename"
          of={entry.name}
          className="link project-change"
          onPress={() => setTyped(entry.name)}
        />
        <Act text="Copy" of={entry.name} onPress={onCopy} />
        <Act text="Remove" of={entry.name} onPress={onRemove} />
      </span>
    </li>
  );
}

/** By keyboard one goes on from where one was. */
function goOnFrom(row: HTMLElement | null): void {
  requestAnimationFrame(() => row?.querySelector<HTMLElement>(".project-change")?.focus());
}

function Act(props: {
  readonly text: string;
  readonly of: string;
  readonly className?: string;
  readonly onPress: () => void;
}) {
  const { text, of, className = "link", onPress } = props;
  return (
    <button type="button" className={className} aria-label={`${text} ${of}`} onClick={onPress}>
      {text}
    </button>
  );
}
