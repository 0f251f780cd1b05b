import { mapRoom } from "./map-axes.tsx";
import type { MapPlan } from "./map-plan.ts";

/** How much larger the map can be drawn than it is laid out. */
export const zoomSteps = [1, 1.25, 1.5, 2, 3] as const;

/**
 * The next step of the zoom.
 * @param zoom - where it is
 * @param by - 1 in, −1 out, 0 back to the whole map
 * @returns one of the steps
 */
export function zoomStep(zoom: number, by: -1 | 0 | 1): number {
  if (by === 0) return 1;
  const at = zoomSteps.findIndex((each) => each === zoom) + by;
  return zoomSteps[Math.max(0, Math.min(zoomSteps.length - 1, at))] ?? 1;
}

/**
 * Where the places of a map lie once it is drawn larger: for what stands beside the drawing.
 * @param plan - the map as it is laid out
 * @param zoom - how much larger it is drawn
 * @returns the same plan on the screen's scale
 */
export function zoomedPlan(plan: MapPlan, zoom: number): MapPlan {
  if (zoom === 1) return plan;
  const above = mapRoom.head * (zoom - 1);
  return {
    ...plan,
    xOf: (span) => plan.xOf(span) * zoom,
    yOf: (notes) => plan.yOf(notes) * zoom + above,
    placeWidth: plan.placeWidth * zoom,
    placeHeight: plan.placeHeight * zoom,
    width: plan.width * zoom,
    height: (plan.height + mapRoom.foot) * zoom - mapRoom.foot + above,
  };
}
