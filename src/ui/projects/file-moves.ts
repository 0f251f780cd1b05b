import { openAsOwn, openFromLink } from "./open.ts";
import { nameShown, notify, projects, warn } from "./projects-state.ts";
import { saveAsFile, unloaded } from "./save-as-file.ts";
import { projectOnPage } from "./save.ts";
import { filesDoor } from "./store-door.ts";

/** Largest file that is looked into, bytes; characters take up to four. */
const mostBytes = 32_000_000;

/** Files of notes, which are no projects. */
const music = /\.(musicxml|mxl|xml|midi?|abc)$/i;

/**
 * Whether a file is meant to be a project.
 * @param file - chosen or dropped by the user
 * @returns true by its name's ending
 */
export const isProjectFile = (file: File): boolean => /\.json$/i.test(file.name);

/**
 * Opens a project file as a project of its own; what is on the page is stored first. A file that is
 * none is refused in a sentence.
 * @param file - chosen or dropped by the user
 */
export async function openFile(file: File): Promise<void> {
  const refuse = (why: string) =>
    warn(`${file.name.slice(0, 80)} was not opened. ${why} Your work is as it was.`);
  if (music.test(file.name))
    return refuse("It holds notes, not a project: a melody is read where a phrase is begun.");
  if (file.size > mostBytes) return refuse("It is larger than any project.");
  try {
    const { readProject } = await filesDoor();
    const read = readProject(await file.text());
    if (read.ok) await openAsOwn(read.value);
    else refuse(read.problem.message);
  } catch {
    refuse(unloaded);
  }
}

/** Puts a link on the clipboard that holds the question, the phrase and the kept voicings. */
export async function copyLink(): Promise<void> {
  const file = [{ text: "Save as a file", act: () => void saveAsFile() }];
  try {
    const { writeShareLink } = await filesDoor();
    const link = writeShareLink(projectOnPage());
    if (!link.ok) return warn(link.problem.message, file);
    const address = `${location.origin}${location.pathname}#${link.value}`;
    const size = `${address.length.toLocaleString("en")} characters`;
    const isLong = address.length > longestForMail;
    const warning = isLong ? " Some mail programs cut links this long; a file is safer." : "";
    const words = `The link, ${size}, holds the question and ${keptWords()}; nothing is stored elsewhere.`;
    if (await isCopied(address)) notify(`Link copied. ${words}${warning}`, isLong ? file : []);
    else
      projects.setState({
        notice: {
          text: `The browser refused the clipboard: copy the link from here. ${words}${warning}`,
          isWrong: false,
          ways: file,
          copyable: address,
        },
      });
  } catch {
    warn(unloaded);
  }
}

/** Mail programs and chats cut links somewhere above this. */
const longestForMail = 8_000;

function keptWords(): string {
  const { kept, phrase } = projectOnPage().history.present;
  const voicings =
    kept.length === 0
      ? "no kept voicings"
      : kept.length === 1
        ? "one kept voicing"
        : `${kept.length} kept voicings`;
  return phrase === null ? voicings : `${voicings}, and the phrase`;
}

async function isCopied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/**
 * Opens what the address carries behind its #; refused in a sentence when it is no project.
 * @param fragment - with "#"
 * @returns whether something was opened
 */
export async function openLink(fragment: string): Promise<boolean> {
  try {
    const { readShareLink } = await filesDoor();
    const read = readShareLink(fragment);
    if (read.ok) {
      await openFromLink(read.value);
      return true;
    }
    warn(`The link was not opened. ${read.problem.message} ${stays()}`);
  } catch {
    warn(`The link was not opened. ${unloaded}`);
  }
  return false;
}

const stays = (): string =>
  projects.getState().id === null ? "" : `${nameShown(projects.getState())} is as it was.`;
