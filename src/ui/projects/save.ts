import type { Result } from "../../base/index.ts";
import type { Project, SavedEntry, StoredEntry } from "../../files/index.ts";
import type { PageState } from "../state/page-state.ts";
import { page } from "../store.ts";
import { dropLeftOver, leaveOver } from "./left-over.ts";
import { nameShown, projects } from "./projects-state.ts";
import { freeName, newProjectId, rememberProject } from "./remembered.ts";
import { tellTabs } from "./other-tabs.ts";
import { withStore } from "./store-door.ts";

/** Time without a change after which the work is saved, ms. */
const quietMs = 400;
/** Longest time that changes one after the other put it off, ms. */
const longestMs = 2_000;

let timer: ReturnType<typeof setTimeout> | undefined;
let waitingSince: number | undefined;
let running: Promise<void> | undefined;

/** The history that is stored, being stored, or not to be stored. */
let seen = page.getState().history;

/**
 * Says that a history needs no saving: it is about to be opened.
 * @param history - what comes onto the page
 */
export function needsNoSaving(history: PageState["history"]): void {
  clearTimeout(timer);
  waitingSince = undefined;
  seen = history;
}

/** The work on the page as a project. */
export function projectOnPage(): Project {
  const state = projects.getState();
  return { name: nameShown(state), history: page.getState().history, settings: state.settings };
}

/** Saves the work whenever it changes, and at once when the page is left or hidden. */
export function startAutosave(): void {
  page.subscribe(({ history }) => {
    if (history !== seen) changed();
  });
  addEventListener("pagehide", putAside);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void saveNow();
  });
  addEventListener("beforeunload", (event) => {
    // Only where leaving would lose work.
    if (projects.getState().problem !== null) event.preventDefault();
  });
}

/** The page is left: what the database may not take in time is put aside, and taken up again. */
function putAside(): void {
  const { saving, conflict, revision } = projects.getState();
  if (saving === "saved" || saving === "nothing-yet" || conflict !== null) return;
  const id = projects.getState().id ?? newProjectId();
  leaveOver(id, projectOnPage(), revision);
  rememberProject(id);
  // Saved under the id it was put aside with, if there is time after all.
  if (projects.getState().id !== null) void saveNow();
}

function changed(): void {
  const { past, future } = page.getState().history;
  // Looking round a project from a link keeps nothing: the link has it still.
  if (projects.getState().isFromLink && past.length + future.length === 0) return;
  seen = page.getState().history;
  saveSoon();
}

/** Saves once changes have come to rest. */
export function saveSoon(): void {
  const { saving } = projects.getState();
  if (saving !== "saving") projects.setState({ saving: "waiting" });
  waitingSince ??= Date.now();
  const wait = Math.max(0, Math.min(quietMs, waitingSince + longestMs - Date.now()));
  clearTimeout(timer);
  timer = setTimeout(() => {
    // A token under the finger is moved first; the work is saved when it rests.
    if (page.getState().drag !== null) saveSoon();
    else void saveNow();
  }, wait);
}

/**
 * Saves what is not saved yet.
 * @returns when the store has answered
 */
export async function saveNow(): Promise<void> {
  clearTimeout(timer);
  while (running !== undefined) await running;
  const { saving, conflict } = projects.getState();
  if (conflict !== null || saving === "saved" || saving === "nothing-yet") return;
  running = save();
  await running;
  running = undefined;
}

async function save(): Promise<void> {
  waitingSince = undefined;
  projects.setState({ saving: "saving" });
  const { id, revision } = projects.getState();
  const saved = await (id === null ? saveFirst() : write(id, projectOnPage(), revision));
  if (!saved.ok) return failed(saved.problem);
  // What changed while it was written is saved next.
  took(saved.value, waitingSince !== undefined);
}

function took(entry: SavedEntry, isBehind: boolean): void {
  const { entries } = projects.getState();
  projects.setState({
    id: entry.id,
    revision: entry.revision,
    saving: isBehind ? "waiting" : "saved",
    problem: null,
    stepsLeftOut: entry.stepsLeftOut,
    isFromLink: false,
    entries: entries && [entry, ...entries.filter(({ id }) => id !== entry.id)],
  });
  if (!isBehind) dropLeftOver(entry.id);
  rememberProject(entry.id);
  tellTabs("saved", entry.id, entry.revision);
}

function failed(problem: { readonly code: string; readonly message: string }): void {
  if (problem.code === "project-conflict")
    return projects.setState({ saving: "waiting", conflict: "changed" });
  if (problem.code === "project-gone")
    return projects.setState({ saving: "waiting", conflict: "removed" });
  projects.setState({ saving: "failed", problem });
}

/** Stores the work for the first time, under a name of its own. */
async function saveFirst(): Promise<Result<SavedEntry>> {
  const id = newProjectId();
  const { name } = projects.getState();
  const entries = await storedEntries();
  const taken = entries.map((entry) => entry.name);
  projects.setState({ name: name === null ? freeName("Sketch 1", taken) : freeName(name, taken) });
  const saved = await write(id, projectOnPage(), 0);
  if (saved.ok) {
    clearFragment();
    tellTabs("opened", id);
  }
  return saved;
}

/** Takes a link out of the address once the store has what it held. */
function clearFragment(): void {
  if (location.hash !== "") history.replaceState(null, "", location.pathname + location.search);
}

/** What is stored; nothing where the store cannot be read. */
export async function storedEntries(): Promise<readonly StoredEntry[]> {
  const listed = await withStore((store) => store.list());
  if (!listed.ok) return [];
  projects.setState({ entries: listed.value });
  return listed.value;
}

/**
 * Writes a project to the store.
 * @param id - where
 * @param project - what
 * @param baseRevision - revision it stands on; 0 when it is new
 * @returns the entry, or the problem
 */
export function write(
  id: string,
  project: Project,
  baseRevision: number,
): Promise<Result<SavedEntry>> {
  const nowMilliseconds = Date.now();
  return withStore((store) => store.save({ id, project, baseRevision, nowMilliseconds }));
}
