import { placeId } from "../state/place-id.ts";
import type { Shade } from "../search-messages.ts";
import { page } from "../store.ts";
import { atlasLink } from "./atlas-link.ts";
import { learnTraits } from "./filter.ts";

/** Measures the whole map in view by the chosen measure, in the worker. */
export function shadeMap(): void {
  const { answer, shading } = page.getState();
  if (answer === null) return;
  const { cells } = answer.map;
  learnTraits();
  atlasLink().stopShading();
  page.setState({ shading: { metricId: shading.metricId, byPlace: new Map() } });
  atlasLink().shade(answer.asked.question, cells, shading.metricId, (from, shades) => {
    const byPlace = new Map(page.getState().shading.byPlace);
    shades.forEach((shade: Shade, index) => {
      const cell = cells[from + index];
      if (cell !== undefined) byPlace.set(placeId(cell), shade);
    });
    page.setState({ shading: { metricId: shading.metricId, byPlace } });
  });
}

/**
 * Shades the map by another measure.
 * @param metricId - id of the measure
 */
export function shadeBy(metricId: string): void {
  page.setState({ shading: { metricId, byPlace: new Map() } });
  shadeMap();
}
