import { createHistory, firstInquiry } from "../../explore/index.ts";
import type { ProjectReading, StoredEntry, StoredProject } from "../../files/index.ts";
import { announce } from "../actions/announce.ts";
import { showPane } from "../actions/pane.ts";
import { openWork } from "../actions/steps.ts";
import { firstSession } from "../state/session.ts";
import { page, undoLimit } from "../store.ts";
import { saveAsFile } from "./save-as-file.ts";
import { takeLeftOver } from "./left-over.ts";
import { tellTabs } from "./other-tabs.ts";
import { nameShown, notify, projects, unstored, warn } from "./projects-state.ts";
import { freeName, newProjectId, rememberProject } from "./remembered.ts";
import { needsNoSaving, projectOnPage, saveNow, saveSoon, storedEntries } from "./save.ts";
import { filesDoor, withStore } from "./store-door.ts";

/** Longest a project's name gets, in characters. */
export const longestName = 80;

const otherCosts =
  "It was saved with another version of the costs: the notes are as they were, what the map finds best may differ.";

/** Saves what is on the page and lets it go; where it cannot be saved the user is asked first. */
async function leave(goOn: () => void): Promise<boolean> {
  await saveNow();
  const { id, problem, conflict, saving } = projects.getState();
  const isLost = problem !== null || (conflict !== null && saving !== "saved");
  if (isLost && !isUntouched()) {
    const letGo = () => {
      projects.setState({ ...unstored, notice: null });
      goOn();
    };
    warn("What is on the page is not stored and would be lost.", [
      { text: "Save it as a file", act: () => void saveAsFile() },
      { text: "Let it go", act: letGo },
    ]);
    return false;
  }
  if (id !== null) tellTabs("left", id);
  return true;
}

/** Puts a project on the page. */
function show(reading: ProjectReading, entry: StoredEntry | null): void {
  const { project, hasOtherModel } = reading;
  const { entries, removed } = projects.getState();
  projects.setState({
    ...unstored,
    entries,
    removed,
    notice: null,
    name: project.name.trim().slice(0, longestName) || null,
    settings: project.settings,
    ...(entry && { id: entry.id, revision: entry.revision, saving: "saved" }),
  });
  // What has no phrase is seen where its chord is.
  if (project.history.present.phrase === null) showPane("chord");
  needsNoSaving(project.history);
  openWork(project.history);
  if (entry !== null) {
    rememberProject(entry.id);
    tellTabs("opened", entry.id);
  }
  if (hasOtherModel) notify(otherCosts);
}

/**
 * Opens a stored project.
 * @param id - which
 * @param isWanted - asked again once it is read; it stays closed when this is false
 * @returns whether it is on the page
 */
export async function openStored(id: string, isWanted = () => true): Promise<boolean> {
  const again = () => void openStored(id);
  if (!(await leave(again))) return false;
  const left = page.getState().history;
  const loaded = await withStore((store) => store.load(id));
  if (!isWanted()) return false;
  if (await showLeftOver(id, loaded.ok ? loaded.value : null)) return true;
  if (!loaded.ok) {
    warn(`The project could not be opened. ${loaded.problem.message}`);
    return false;
  }
  // What was done while it was read is kept as well.
  if (page.getState().history !== left && !(await leave(again))) return false;
  show(loaded.value, loaded.value.entry);
  announce(`${loaded.value.project.name} is open.`);
  return true;
}

/** Goes on from what was changed in the last moment before the page was left, if anything was. */
async function showLeftOver(id: string, stored: StoredProject | null): Promise<boolean> {
  const left = takeLeftOver(id);
  if (left === null) return false;
  const { readProject, writeProject } = await filesDoor();
  const read = readProject(left.text);
  if (!read.ok) return false;
  const isStored =
    stored !== null && writeProject(stored.project, { withHistory: true }) === left.text;
  if (isStored) return false;
  const isNext = (stored?.entry.revision ?? 0) === left.revision;
  show(read.value, isNext ? (stored?.entry ?? null) : null);
  if (!isNext) {
    projects.setState({ name: `${nameShown(projects.getState())}, copy` });
    notify(
      "Another tab has changed this project since; what was changed here last goes on as a copy.",
    );
  }
  saveSoon();
  return true;
}

/** Takes the version that another tab stored; what was changed here since is let go. */
export async function takeStored(): Promise<void> {
  const { id } = projects.getState();
  if (id === null) return;
  const loaded = await withStore((store) => store.load(id));
  if (loaded.ok) show(loaded.value, loaded.value.entry);
  else warn(loaded.problem.message);
}

/** Goes on with what is on the page as a project of its own. */
export async function keepAsCopy(): Promise<void> {
  const { id, name, settings } = projects.getState();
  if (id !== null) tellTabs("left", id);
  projects.setState({ ...unstored, settings, name: `${nameShown({ name })}, copy`, notice: null });
  saveSoon();
  await saveNow();
  announce(`You are on ${projects.getState().name ?? "a copy"} now.`);
}

/** Starts a project with the worked question. */
export async function startNew(): Promise<void> {
  if (!(await leave(() => void startNew()))) return;
  const history = createHistory(firstSession(firstInquiry()), undoLimit);
  show({ project: { name: "", history, settings: {} }, model: 0, hasOtherModel: false }, null);
  rememberProject(null);
  announce("A new project.");
}

/**
 * Opens what came from a file as a project of its own.
 * @param reading - the project
 */
export async function openAsOwn(reading: ProjectReading): Promise<void> {
  if (!(await leave(() => void openAsOwn(reading)))) return;
  show(reading, null);
  saveSoon();
  await saveNow();
  announce(`${projects.getState().name ?? ""} is open.`);
}

/**
 * Shows what a link holds; it is stored once it is changed, and the link holds it until then.
 * @param reading - the project
 */
export async function openFromLink(reading: ProjectReading): Promise<void> {
  if (!(await leave(() => void openFromLink(reading)))) return;
  show(reading, null);
  projects.setState({ isFromLink: true });
  const text =
    "This came with a link. It becomes a project of yours as soon as you change something; your other projects are as they were.";
  notify(reading.hasOtherModel ? `${text} ${otherCosts}` : text, [
    { text: "Keep it now", act: () => void keepNow() },
  ]);
}

async function keepNow(): Promise<void> {
  projects.setState({ notice: null });
  saveSoon();
  await saveNow();
}

/**
 * Gives the project on the page another name.
 * @param name - the name; nothing happens when it is empty
 */
export function renameThis(name: string): void {
  const wanted = name.trim().slice(0, longestName);
  if (wanted === "" || wanted === projects.getState().name) return;
  projects.setState({ name: wanted });
  saveSoon();
}

/**
 * Gives a stored project another name.
 * @param entry - which
 * @param name - the name
 */
export async function renameStored(entry: StoredEntry, name: string): Promise<void> {
  const wanted = name.trim().slice(0, longestName);
  if (wanted === "" || wanted === entry.name) return;
  const saved = await withStore(async (store) => {
    const loaded = await store.load(entry.id);
    if (!loaded.ok) return loaded;
    return store.save({
      id: entry.id,
      project: { ...loaded.value.project, name: wanted },
      baseRevision: loaded.value.entry.revision,
      nowMilliseconds: entry.savedAtMilliseconds,
    });
  });
  if (saved.ok) tellTabs("saved", entry.id, saved.value.revision);
  else warn(saved.problem.message);
  await storedEntries();
}

/**
 * Stores a copy of a project.
 * @param entry - which
 */
export async function copyStored(entry: StoredEntry): Promise<void> {
  const isThis = entry.id === projects.getState().id;
  const taken = (await storedEntries()).map(({ name }) => name);
  const copied = await withStore(async (store) => {
    const loaded = isThis ? null : await store.load(entry.id);
    if (loaded?.ok === false) return loaded;
    const project = loaded?.value.project ?? projectOnPage();
    const name = freeName(`${project.name}, copy`, taken);
    return store.save({
      id: newProjectId(),
      project: { ...project, name },
      baseRevision: 0,
      nowMilliseconds: Date.now(),
    });
  });
  if (copied.ok) announce(`${copied.value.name} is stored.`);
  else warn(copied.problem.message);
  await storedEntries();
}

/**
 * Removes a stored project; it can be brought back until the page is left.
 * @param entry - which
 */
export async function removeStored(entry: StoredEntry): Promise<void> {
  const isThis = entry.id === projects.getState().id;
  if (isThis) await saveNow();
  const loaded = await withStore((store) => store.load(entry.id));
  const gone = await withStore((store) => store.remove(entry.id));
  if (!gone.ok) return warn(gone.problem.message);
  tellTabs("removed", entry.id);
  const rest = await storedEntries();
  const bringBack = () => loaded.ok && void putBack(entry, loaded.value);
  projects.setState({ removed: loaded.ok ? { name: entry.name, bringBack } : null });
  announce(`${entry.name} is removed.`);
  if (!isThis) return;
  projects.setState({ ...unstored });
  rememberProject(null);
  const next = rest[0];
  if (next === undefined || !(await openStored(next.id))) await startNew();
}

async function putBack(entry: StoredEntry, reading: ProjectReading): Promise<void> {
  const saved = await withStore((store) =>
    store.save({
      id: entry.id,
      project: reading.project,
      baseRevision: 0,
      nowMilliseconds: entry.savedAtMilliseconds,
    }),
  );
  if (!saved.ok) return warn(saved.problem.message);
  projects.setState({ removed: null });
  announce(`${entry.name} is back.`);
  await storedEntries();
}

/** Whether nothing was done on the page yet. */
export function isUntouched(): boolean {
  const { past, future, present } = page.getState().history;
  return past.length + future.length === 0 && present.step === "start";
}
