import { lazy, Suspense, useState } from "react";
import { nameShown, useProjects, type ProjectsState } from "./projects-state.ts";
import { copyLink } from "./file-moves.ts";

/** The list of projects is loaded when it is first opened. */
const ProjectsSheet = lazy(() =>
  import("./projects-sheet.tsx").then(({ ProjectsSheet: part }) => ({ default: part })),
);

/** Which project is on the page, whether it is saved, and the way to all others. */
export function ProjectLine() {
  const [isOpen, setOpen] = useState(false);
  const name = useProjects(nameShown);
  const words = useProjects(savedWords);
  return (
    <div className="row project-line">
      <button
        type="button"
        className="link project-name"
        aria-haspopup="dialog"
        aria-label={`Projects: ${name}`}
        title="Open, name, copy, save and share your work"
        onClick={() => setOpen(true)}
      >
        <span>{name}</span>
      </button>
      <span className="quiet" data-testid="saved">
        {words}
      </span>
      <button
        type="button"
        className="link push"
        title="Copy a link that holds the question and the kept voicings"
        onClick={() => void copyLink()}
      >
        Share
      </button>
      {isOpen && (
        <Suspense>
          <ProjectsSheet onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </div>
  );
}

/** Where the work stands with the store, in a word or three. */
function savedWords({ saving, problem, conflict, isFromLink }: ProjectsState): string {
  if (problem !== null || conflict !== null) return "not saved";
  if (isFromLink) return "from a link";
  if (saving === "nothing-yet") return "";
  return saving === "saved" ? "saved" : "saving …";
}
