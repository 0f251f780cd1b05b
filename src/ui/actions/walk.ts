import type { SectionId } from "../../band/index.ts";
import type { AtlasCell, CellKey, LayerId } from "../../voicing/index.ts";
import { cellAt, cellWithPlayers, neighbourCell, type Direction } from "../state/places.ts";
import { page, session } from "../store.ts";
import { announce } from "./announce.ts";
import { atlasLink } from "./atlas-link.ts";
import { answerLayer } from "./answer.ts";
import { placeSpoken } from "./place-spoken.ts";
import { take, wander } from "./steps.ts";

/** Goes to a place of the map; its best voicing comes into view. */
export function goTo(key: CellKey): void {
  const now = session();
  page.setState({ emptyPlace: null, nextFew: null });
  const next = { ...now, place: key, made: null };
  // Leaving a voicing made by hand is a step: it can be called back.
  if (now.made === null) wander(next);
  else take({ ...next, step: "back to the map" });
}

/** Walks one place on; says where that is. */
export function walk(direction: Direction): void {
  const { answer, view } = page.getState();
  if (answer === null || view === null) return;
  const here = page.getState().emptyPlace?.key ?? view.report.cell;
  arrive(neighbourCell(answer.map.cells, here, direction), edgeWords[direction]);
}

/** One player more or fewer. */
export function walkPlayers(by: 1 | -1): void {
  const { answer, view } = page.getState();
  if (answer === null || view === null) return;
  const words = by > 0 ? "No texture has more players." : "No texture has fewer players.";
  arrive(cellWithPlayers(answer.map.cells, view.report.cell, by), words);
}

/** So many players: the same texture if there is one, else the nearest. */
export function goToPlayers(players: number): void {
  const { answer, view } = page.getState();
  if (answer === null || view === null || view.report.cell.players === players) return;
  const by = players > view.report.cell.players ? 1 : -1;
  const others = answer.map.cells.filter((cell) => cell.key.players === players);
  arrive(cellWithPlayers(others, view.report.cell, by), "");
}

/** Goes to a place that holds nothing, and asks why. */
export function goToEmpty(key: CellKey): void {
  const { answer } = page.getState();
  if (answer === null || cellAt(answer.map.cells, key) !== undefined) return;
  page.setState({ emptyPlace: { key, rules: null } });
  void atlasLink()
    .whyEmpty(answer.asked.question, key, answer.map)
    .then((rules) => {
      const { emptyPlace } = page.getState();
      if (emptyPlace?.key === key) page.setState({ emptyPlace: { key, rules } });
    });
}

/** Shows another layer of the map. */
export function goToLayer(layer: LayerId): void {
  const now = session();
  if (now.layer === layer) return;
  page.setState({ emptyPlace: null, nextFew: null });
  wander({ ...now, layer, made: null });
}

/** Shows the textures in which exactly these sections sound; null for any. */
export function goToSections(sections: readonly SectionId[] | null): void {
  page.setState({ emptyPlace: null, nextFew: null });
  wander({ ...session(), sections, made: null });
}

/** Searches the layer in view again after it was stopped. */
export function searchOn(): void {
  answerLayer();
}

const edgeWords: Readonly<Record<Direction, string>> = {
  narrower: "Nothing narrower.",
  wider: "Nothing wider.",
  more: "Nothing with more notes.",
  fewer: "Nothing with fewer notes.",
};

function arrive(cell: AtlasCell | undefined, edge: string): void {
  if (cell === undefined) return announce(edge);
  goTo(cell.key);
  sayView();
}

/** Speaks the place in view, what sounds there and how it measures. */
export function sayView(): void {
  const { view, answer, shading } = page.getState();
  if (view !== null && answer !== null) announce(placeSpoken(view, answer, shading.metricId));
}
