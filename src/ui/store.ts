import { createStore, useStore } from "zustand";
import { createHistory, firstInquiry } from "../explore/index.ts";
import type { PageState } from "./state/page-state.ts";
import { storedPane } from "./state/pane.ts";
import { noFilter } from "./state/map-filter.ts";
import { firstSession, type Session } from "./state/session.ts";
import { storedTheme } from "./state/theme.ts";

/** Steps that can be taken back; older ones are let go. */
export const undoLimit = 1000;

/** The page's state. Actions change it; components read it through `usePage`. */
export const page = createStore<PageState>()(() => ({
  history: createHistory(firstSession(firstInquiry()), undoLimit),
  typing: null,
  strip: [],
  problems: [],
  answer: null,
  searching: null,
  view: null,
  drag: null,
  shading: { metricId: "interleaving", byPlace: new Map() },
  filter: noFilter,
  traits: null,
  emptyPlace: null,
  nextFew: null,
  unwritten: null,
  hovered: null,
  selectedPlayer: null,
  swapping: null,
  pointed: null,
  comparedWith: null,
  fault: null,
  theme: storedTheme(),
  pane: storedPane(),
  borrowed: null,
}));

/**
 * Reads a part of the page's state in a component; renders again when that part changes.
 * @param pick - the part
 * @returns the part
 */
export function usePage<T>(pick: (state: PageState) => T): T {
  return useStore(page, pick);
}

/**
 * The session as it stands.
 * @returns the present step of the history
 */
export function session(): Session {
  return page.getState().history.present;
}
