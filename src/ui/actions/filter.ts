import type { AtlasCell, CellKey } from "../../voicing/index.ts";
import { fitsFilter, isFiltering, noFilter, type MapFilter } from "../state/map-filter.ts";
import { placeId } from "../state/place-id.ts";
import { page } from "../store.ts";
import { announce } from "./announce.ts";
import { atlasLink } from "./atlas-link.ts";

/**
 * Shows only some textures of the map; the others stay as faint outlines.
 * @param change - what is asked for now
 */
export function showOnly(change: Partial<MapFilter>): void {
  page.setState({ filter: { ...page.getState().filter, ...change } });
  learnTraits();
}

/** Shows every texture again. */
export function showEverything(): void {
  page.setState({ filter: noFilter });
  announce("Every texture is shown.");
}

let asked: readonly AtlasCell[] | null = null;

/** Has the worker say what the textures of the map in view are like, once a filter needs it. */
export function learnTraits(): void {
  const { answer, filter, traits } = page.getState();
  if (answer === null || !isFiltering(filter)) return;
  const { cells } = answer.map;
  if (traits?.cells === cells || asked === cells) return;
  asked = cells;
  void atlasLink()
    .traits(answer.asked.question, cells)
    .then((found) => {
      if (page.getState().answer?.map.cells !== cells) return;
      const byPlace = new Map(cells.map((cell, index) => [placeId(cell), found[index]!]));
      page.setState({ traits: { cells, byPlace } });
    })
    .catch((fault: unknown) => {
      page.setState({ fault: fault instanceof Error ? fault.message : String(fault) });
    })
    .finally(() => {
      if (asked === cells) asked = null;
    });
}

/**
 * Whether a place of the map is shown in full.
 * @param key - the place; a line at a place of harmony goes by the harmony
 * @returns false when a filter is on and the texture does not fit
 */
export function isShown(key: CellKey): boolean {
  const { filter, traits } = page.getState();
  if (!isFiltering(filter)) return true;
  const known = traits?.byPlace.get(placeId({ key, family: "harmony" }));
  return known === undefined || fitsFilter(filter, known);
}
