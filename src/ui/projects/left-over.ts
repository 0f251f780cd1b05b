import type { Project } from "../../files/index.ts";
import { filesLoaded } from "./store-door.ts";

/**
 * What was changed in the last moment before the page was left. The database answers too late for
 * that, so it is put where writing is done at once, and taken up when the project is opened again.
 */
interface LeftOver {
  /** Stored revision it stands on; 0 when nothing was stored. */
  readonly revision: number;
  /** As a project file. */
  readonly text: string;
}

const place = (id: string): string => `hornweave-left-${id}`;

/**
 * Puts the work aside before the page is left.
 * @param id - of which project
 * @param project - the work
 * @param revision - stored revision it stands on
 */
export function leaveOver(id: string, project: Project, revision: number): void {
  const files = filesLoaded();
  if (files === undefined) return;
  for (const withHistory of [true, false])
    try {
      const text = files.writeProject(project, { withHistory });
      localStorage.setItem(place(id), JSON.stringify({ revision, text } satisfies LeftOver));
      return;
    } catch {
      // Too much for this place: the work without its undo steps is tried, then nothing is left.
    }
}

/**
 * Takes up what was left over.
 * @param id - of which project
 * @returns what there is, or null; it is not there a second time
 */
export function takeLeftOver(id: string): LeftOver | null {
  try {
    const stored = localStorage.getItem(place(id));
    if (stored === null) return null;
    localStorage.removeItem(place(id));
    const { revision, text } = JSON.parse(stored) as Partial<LeftOver>;
    if (typeof revision !== "number" || typeof text !== "string") return null;
    return { revision, text };
  } catch {
    return null;
  }
}

/**
 * Lets go what was left over: the store has it.
 * @param id - of which project
 */
export function dropLeftOver(id: string): void {
  try {
    localStorage.removeItem(place(id));
  } catch {
    // Nothing was put there either.
  }
}
