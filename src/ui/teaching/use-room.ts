import { useMedia } from "../parts/use-size.ts";
import type { PairSize } from "./pair-sizes.ts";
import { useTeaching } from "./teaching-store.ts";

/** Below this width everything stands in one column, at the desk's type. */
const oneColumn = "(max-width: 1199px)";
/** Drawings narrower than this get small tokens, CSS pixels. */
const narrow = 640;

/**
 * Whether words and drawing stand in one column.
 * @returns by the window's width
 */
export function useOneColumn(): boolean {
  return useMedia(oneColumn);
}

/**
 * Whether the type is large: chosen, and the window wide enough for it.
 * @returns true for a room
 */
export function useIsRoom(): boolean {
  const isChosen = useTeaching((state) => state.isRoom);
  return !useOneColumn() && isChosen;
}

/**
 * The size at which a pair is drawn.
 * @param width - room for it, CSS pixels
 * @returns by window and by the learner's choice
 */
export function usePairSize(width: number): PairSize {
  const isRoom = useIsRoom();
  if (width < narrow) return "phone";
  return isRoom ? "room" : "desk";
}

/** Heights of drawings that stand in one column with the words, CSS pixels. */
const columnHeights: Readonly<Record<PairSize, number>> = { phone: 420, desk: 440, room: 520 };

/**
 * How high a pair may be drawn.
 * @param size - how large it is drawn
 * @param room - height that is free beside the words, CSS pixels
 * @returns CSS pixels
 */
export function usePairHeight(size: PairSize, room: number): number {
  return useOneColumn() ? columnHeights[size] : Math.max(280, room);
}
