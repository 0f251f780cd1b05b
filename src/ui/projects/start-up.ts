import { answerQuestion } from "../actions/answer.ts";
import { page } from "../store.ts";
import { keepOffline } from "../offline/keep-offline.ts";
import { openLink } from "./file-moves.ts";
import { isUntouched, keepAsCopy, openStored } from "./open.ts";
import { listenToTabs, tellTabs, type TabWord } from "./other-tabs.ts";
import { notify, projects, warn } from "./projects-state.ts";
import { rememberedProject, rememberProject } from "./remembered.ts";
import { startAutosave, storedEntries } from "./save.ts";

/** Longest the page stays empty for what is stored, ms. */
const patienceMs = 4_000;

/**
 * Puts the work on the page: what a link carries, else what was worked on last, else the worked
 * question. From then on it is saved as it changes.
 */
export async function beginWork(): Promise<void> {
  listenToTabs(heard);
  startAutosave();
  const id = rememberedProject();
  if (location.hash.length > 1 || typeof id === "string") {
    const opening = openRemembered(id ?? null);
    const isLate = await Promise.race([opening, later(patienceMs)]);
    if (isLate === "late")
      warn(
        "What is stored takes long to answer; it opens when it does, unless you begin something.",
      );
  }
  if (page.getState().answer === null && page.getState().searching === null) answerQuestion();
  lookUpSoon();
  addEventListener("hashchange", () => {
    if (location.hash.length > 1) void openLink(location.hash);
  });
  addEventListener("pagehide", () => {
    const { id: mine } = projects.getState();
    if (mine !== null) tellTabs("left", mine);
  });
}

async function openRemembered(id: string | null): Promise<void> {
  const hasLink = location.hash.length > 1;
  if (hasLink && (await openLink(location.hash))) return;
  const { notice } = projects.getState();
  if (id !== null && isUntouched()) {
    const isOpen = await openStored(id, isUntouched);
    if (!isOpen) rememberProject(null);
  }
  if (notice !== null) projects.setState({ notice });
}

const later = (ms: number): Promise<"late"> =>
  new Promise((done) => setTimeout(() => done("late"), ms));

/** Looks up what is stored once the first answer stands, so as not to hold it up. */
function lookUpSoon(): void {
  const idle = window.requestIdleCallback ?? ((work: () => void) => setTimeout(work, 200));
  const stop = page.subscribe(({ answer }) => {
    if (answer === null) return;
    stop();
    idle(() => void lookUpProjects());
    keepOffline();
  });
}

/** Once the first answer stands: the store is made ready, and what it holds is looked up. */
async function lookUpProjects(): Promise<void> {
  const entries = await storedEntries();
  const latest = entries[0];
  // The browser forgot what was open, not what is stored.
  const isUnknown = rememberedProject() === undefined && projects.getState().id === null;
  if (latest !== undefined && isUnknown && isUntouched() && !isLink())
    await openStored(latest.id, isUntouched);
}

const isLink = (): boolean => projects.getState().isFromLink || location.hash.length > 1;

function heard({ kind, id, revision }: TabWord): void {
  const mine = projects.getState();
  if (kind === "saved" || kind === "removed") void storedEntriesIfKnown();
  if (id !== mine.id) return;
  if (kind === "opened") {
    tellTabs("here", id);
    projects.setState({ isOpenElsewhere: true });
  } else if (kind === "here") hereToo();
  else if (kind === "left") {
    projects.setState({ isOpenElsewhere: false });
    // Whoever else has it open says so again.
    tellTabs("opened", id);
  } else if (kind === "removed") projects.setState({ conflict: "removed" });
  else if (revision > mine.revision) projects.setState({ conflict: "changed" });
}

/** This tab came second. */
function hereToo(): void {
  const { isOpenElsewhere } = projects.getState();
  projects.setState({ isOpenElsewhere: true });
  if (isOpenElsewhere) return;
  notify(
    "This project is open in another tab too. When one of them saves a change, the other asks before it goes on; nothing is overwritten.",
    [{ text: "Go on with a copy", act: () => void keepAsCopy() }],
  );
}

async function storedEntriesIfKnown(): Promise<void> {
  if (projects.getState().entries !== null) await storedEntries();
}
