import { createStore, useStore } from "zustand";
import type { Problem } from "../../base/index.ts";
import type { ProjectSettings, StoredEntry } from "../../files/index.ts";

/** Something the user can do about what is said. */
export interface WayOn {
  readonly text: string;
  readonly act: () => void;
}

/** What is said once about the work as a whole, over the page's columns. */
export interface Notice {
  readonly text: string;
  readonly isWrong: boolean;
  readonly ways: readonly WayOn[];
  /** A text to copy by hand. */
  readonly copyable?: string;
}

/** Where the work stands with the store. */
export type SaveState = "nothing-yet" | "waiting" | "saving" | "saved" | "failed";

/** How another tab has got ahead of this one. */
export type Conflict = "changed" | "removed";

/** Project removed last, so that it can come back. */
export interface Removed {
  readonly name: string;
  readonly bringBack: () => void;
}

/** The project on the page, as far as storing it goes. */
export interface ProjectsState {
  /** Null until it is stored for the first time. */
  readonly id: string | null;
  /** Null until it has one. */
  readonly name: string | null;
  /** Stored revision that this work stands on; 0 when it is not stored. */
  readonly revision: number;
  /** Choices that came with the project and go back with it. */
  readonly settings: ProjectSettings;
  readonly saving: SaveState;
  /** Why it is not saved. */
  readonly problem: Problem | null;
  readonly conflict: Conflict | null;
  /** Steps of undo that did not fit into what is stored. */
  readonly stepsLeftOut: number;
  /** Opened from a link and not changed since: the link still has it. */
  readonly isFromLink: boolean;
  readonly isOpenElsewhere: boolean;
  readonly notice: Notice | null;
  /** What is stored, latest first; null until it was looked up. */
  readonly entries: readonly StoredEntry[] | null;
  readonly removed: Removed | null;
}

/** A project that nothing is stored of yet. */
export const unstored = {
  id: null,
  name: null,
  revision: 0,
  settings: {},
  saving: "nothing-yet",
  problem: null,
  conflict: null,
  stepsLeftOut: 0,
  isFromLink: false,
  isOpenElsewhere: false,
} as const;

/** State of the store as the page knows it. */
export const projects = createStore<ProjectsState>()(() => ({
  ...unstored,
  notice: null,
  entries: null,
  removed: null,
}));

/**
 * Reads a part of the state of storing in a component.
 * @param pick - the part
 * @returns the part
 */
export function useProjects<T>(pick: (state: ProjectsState) => T): T {
  return useStore(projects, pick);
}

/**
 * Says something about the work as a whole.
 * @param text - one or two sentences
 * @param ways - what can be done about it
 * @param isWrong - whether something failed
 */
export function notify(text: string, ways: readonly WayOn[] = [], isWrong = false): void {
  projects.setState({ notice: { text, ways, isWrong } });
}

/**
 * Says what failed.
 * @param text - one or two sentences
 * @param ways - what can be done about it
 */
export function warn(text: string, ways: readonly WayOn[] = []): void {
  notify(text, ways, true);
}

/** Takes what was said last away. */
export function dismissNotice(): void {
  projects.setState({ notice: null });
}

/** What a project is called until it has a name. */
export const newName = "New sketch";

/**
 * Name of the project on the page.
 * @param state - state of storing
 * @returns the name shown
 */
export const nameShown = ({ name }: Pick<ProjectsState, "name">): string => name ?? newName;
