import { useEffect, useRef, useState } from "react";
import { isKeptOffline } from "../offline/keep-offline.ts";
import { SheetFrame } from "../parts/sheet.tsx";
import { undoLimit, usePage } from "../store.ts";
import { counted } from "../words/counts.ts";
import { copyLink, openFile } from "./file-moves.ts";
import { copyStored, longestName, openStored, removeStored } from "./open.ts";
import { renameStored, renameThis, startNew } from "./open.ts";
import { ProjectRow } from "./project-row.tsx";
import { nameShown, useProjects, type ProjectsState } from "./projects-state.ts";
import { saveAsFile } from "./save-as-file.ts";
import { storedEntries } from "./save.ts";
import { savedWhen } from "./saved-when.ts";

/** All projects: the one on the page, those stored, and the ways in and out. */
export function ProjectsSheet({ onClose }: { readonly onClose: () => void }) {
  useEffect(() => {
    void storedEntries();
  }, []);
  const open = { isOpen: true, onChange: (isOpen: boolean) => !isOpen && onClose() };
  return (
    <SheetFrame title="Projects" open={open}>
      <p className="sheet-lead">
        Your work is kept in this browser as you go, with the steps you can take back. Nothing
        leaves this machine unless you send it yourself, as a file or as a link.
        {isKeptOffline() && " The page works without a network as well."}
      </p>
      <ThisProject onClose={onClose} />
      <OtherProjects onClose={onClose} />
    </SheetFrame>
  );
}

function ThisProject({ onClose }: { readonly onClose: () => void }) {
  const name = useProjects(nameShown);
  const words = useProjects(standing);
  const back = usePage((state) => state.history.past.length);
  const [typed, setTyped] = useState<string | null>(null);
  const settle = () => {
    if (typed !== null) renameThis(typed);
    setTyped(null);
  };
  return (
    <section aria-labelledby="this-project">
      <h3 className="sheet-part" id="this-project">
        On the page
      </h3>
      <div className="row sheet-line wraps">
        <input
          className="project-rename loud"
          aria-label="Name of this project"
          value={typed ?? name}
          maxLength={longestName}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => event.key === "Enter" && settle()}
        />
        <button type="button" className="act" onClick={() => void saveAsFile()}>
          Save as a file
        </button>
        <button
          type="button"
          className="act"
          onClick={() => {
            onClose();
            void copyLink();
          }}
        >
          Copy a link
        </button>
      </div>
      <p className="quiet">
        {words} {counted(back, "step")} can be taken back, {undoLimit.toLocaleString("en")} at most.
      </p>
    </section>
  );
}

/** Where this project stands with the store, in a sentence. */
function standing(state: ProjectsState): string {
  const { saving, problem, conflict, isFromLink, isOpenElsewhere, stepsLeftOut } = state;
  if (conflict !== null) return "Not saved: another tab has changed it.";
  if (problem !== null) return `Not saved: ${problem.message}`;
  const elsewhere = isOpenElsewhere ? " It is open in another tab too." : "";
  if (isFromLink) return "From a link; kept once you change something.";
  if (saving === "nothing-yet") return "Nothing to save yet.";
  if (stepsLeftOut > 0)
    return `Saved, but for ${counted(stepsLeftOut, "step")} of undo that are too much to store.${elsewhere}`;
  return saving === "saved" ? `Saved.${elsewhere}` : `Saving.${elsewhere}`;
}

function OtherProjects({ onClose }: { readonly onClose: () => void }) {
  const entries = useProjects((state) => state.entries);
  const id = useProjects((state) => state.id);
  const [now] = useState(() => Date.now());
  return (
    <section aria-labelledby="stored-projects">
      <h3 className="sheet-part" id="stored-projects">
        Stored here
      </h3>
      <RemovedLine />
      {entries?.length === 0 && <p className="quiet">Nothing is stored yet.</p>}
      <ul className="project-list">
        {entries?.map((entry) => (
          <ProjectRow
            key={entry.id}
            entry={entry}
            isThis={entry.id === id}
            when={savedWhen(entry.savedAtMilliseconds, Math.max(now, entry.savedAtMilliseconds))}
            onOpen={() => {
              onClose();
              void openStored(entry.id);
            }}
            onRename={(name) =>
              entry.id === id ? renameThis(name) : void renameStored(entry, name)
            }
            onCopy={() => void copyStored(entry)}
            onRemove={() => void removeStored(entry)}
          />
        ))}
      </ul>
      <WaysIn onClose={onClose} />
    </section>
  );
}

/** What was removed last, and the way back. */
function RemovedLine() {
  const removed = useProjects((state) => state.removed);
  if (removed === null) return null;
  return (
    <p className="row wraps" role="status">
      {removed.name} is removed.
      <button type="button" className="link" autoFocus onClick={removed.bringBack}>
        Bring it back
      </button>
    </p>
  );
}

/** A new project, or one from a file. */
function WaysIn({ onClose }: { readonly onClose: () => void }) {
  const input = useRef<HTMLInputElement>(null);
  const chosen = (field: HTMLInputElement) => {
    const [file] = field.files ?? [];
    onClose();
    if (file !== undefined) void openFile(file);
  };
  return (
    <div className="row sheet-line wraps">
      <button
        type="button"
        className="act"
        onClick={() => {
          onClose();
          void startNew();
        }}
      >
        Start a new one
      </button>
      <button type="button" className="act" onClick={() => input.current?.click()}>
        Open a file
      </button>
      <span className="quiet">or drop one anywhere on the page</span>
      <input
        ref={input}
        type="file"
        hidden
        accept=".json,application/json"
        aria-label="Project file"
        onChange={(event) => chosen(event.target)}
      />
    </div>
  );
}
