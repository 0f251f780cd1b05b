import { fail, ok, type Count, type Problem, type Result } from "../base/index.ts";
import { indexedShelf, type Shelf } from "./shelf.ts";
import type { Project, ProjectReading } from "./project/project-types.ts";
import { readProject } from "./project/read-project.ts";
import { fitProject } from "./project/fit-project.ts";

/** A stored project as a list shows it. */
export interface StoredEntry {
  readonly id: string;
  readonly name: string;
  /** When it was saved, milliseconds since 1970. */
  readonly savedAtMilliseconds: Count;
  /** Rises by one with every save. */
  readonly revision: Count;
}

/** A project that was saved. */
export interface SavedEntry extends StoredEntry {
  /** Steps of undo and redo that did not fit; they are there until the page is left. */
  readonly stepsLeftOut: Count;
}

/** A stored project with its place in the store. */
export interface StoredProject extends ProjectReading {
  readonly entry: StoredEntry;
}

/** What is saved, and on top of what. */
export interface SaveRequest {
  readonly id: string;
  readonly project: Project;
  /** Revision this work began from; 0 for a project that is new. */
  readonly baseRevision: Count;
  readonly nowMilliseconds: Count;
}

/**
 * Projects that are kept on this machine. Every answer is a value or a problem with a sentence to
 * show: "storage-full", "storage-refused", "project-conflict", "project-gone",
 * "project-unfit", or those of readProject.
 */
export interface ProjectStore {
  /** Latest first. */
  readonly list: () => Promise<Result<readonly StoredEntry[]>>;
  readonly load: (id: string) => Promise<Result<StoredProject>>;
  /** Saves with the undo history; refused when another tab has saved since. */
  readonly save: (request: SaveRequest) => Promise<Result<SavedEntry>>;
  readonly remove: (id: string) => Promise<Result<null>>;
}

/** What lies on the shelf under a project's id. */
interface StoredRecord {
  readonly name: string;
  readonly savedAtMilliseconds: Count;
  readonly revision: Count;
  /** As writeProject prints it. */
  readonly text: string;
}

/**
 * Opens the store of projects.
 * @param shelf - where they lie; the browser's own database unless given
 * @returns the store
 */
export function openProjectStore(shelf: Shelf = indexedShelf()): ProjectStore {
  return {
    list: () => guarded(async () => ok(listed(await shelf.entries()))),
    load: (id) => guarded(async () => loaded(id, await shelf.get(id))),
    save: (request) => guarded(() => saved(shelf, request)),
    remove: (id) =>
      guarded(async () => {
        await shelf.remove(id);
        return ok(null);
      }),
  };
}

/** Turns what a database throws into problems. */
async function guarded<T>(work: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await work();
  } catch (fault) {
    return { ok: false, problem: problemOf(fault) };
  }
}

function problemOf(fault: unknown): Problem {
  if (fault instanceof Conflict) return fault.problem;
  const name = fault instanceof Error ? fault.name : "";
  if (name === "QuotaExceededError")
    return {
      code: "storage-full",
      message:
        "This machine has no room left for the project: save it as a file and remove old ones.",
    };
  return {
    code: "storage-refused",
    message:
      "The browser does not let this page keep projects: save the project as a file before you leave.",
  };
}

/** Another tab was faster. Thrown inside the database's own step, so that nothing comes between. */
class Conflict extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

function isRecord(value: unknown): value is StoredRecord {
  if (typeof value !== "object" || value === null) return false;
  const { name, savedAtMilliseconds, revision, text } = value as Partial<StoredRecord>;
  return (
    typeof name === "string" &&
    typeof savedAtMilliseconds === "number" &&
    typeof revision === "number" &&
    typeof text === "string"
  );
}

const entryOf = (id: string, record: StoredRecord): StoredEntry => ({
  id,
  name: record.name,
  savedAtMilliseconds: record.savedAtMilliseconds,
  revision: record.revision,
});

function listed(entries: readonly (readonly [string, unknown])[]): readonly StoredEntry[] {
  return entries
    .flatMap(([id, value]) => (isRecord(value) ? [entryOf(id, value)] : []))
    .sort((a, b) => b.savedAtMilliseconds - a.savedAtMilliseconds || (a.id < b.id ? -1 : 1));
}

function loaded(id: string, value: unknown): Result<StoredProject> {
  if (!isRecord(value))
    return fail("project-gone", "This project is no longer stored on this machine.");
  const read = readProject(value.text);
  return read.ok ? ok({ ...read.value, entry: entryOf(id, value) }) : read;
}

async function saved(shelf: Shelf, request: SaveRequest): Promise<Result<SavedEntry>> {
  const { id, project, baseRevision, nowMilliseconds } = request;
  const fitted = fitProject(project);
  if (!fitted.ok) return fitted;
  const { text, stepsLeftOut } = fitted.value;
  const record: StoredRecord = {
    name: project.name,
    savedAtMilliseconds: nowMilliseconds,
    revision: baseRevision + 1,
    text,
  };
  await shelf.update(id, (before) => {
    const stored = isRecord(before) ? before.revision : 0;
    if (stored !== baseRevision) throw new Conflict(conflictOf(stored, baseRevision));
    return record;
  });
  return ok({ ...entryOf(id, record), stepsLeftOut });
}

function conflictOf(stored: Count, base: Count): Problem {
  if (stored === 0)
    return {
      code: "project-gone",
      message: "This project was removed in another tab: save it under a new name.",
    };
  return {
    code: "project-conflict",
    message:
      base === 0
        ? "A project is stored there already: choose another name."
        : "This project was changed in another tab: take over that version, or save yours as a copy.",
  };
}
