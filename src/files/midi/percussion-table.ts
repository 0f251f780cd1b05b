import type { Count } from "../../base/index.ts";

/** Keys of the cymbals. Source: General MIDI Level 1, percussion key map. */
export const percussionKeys: Readonly<Record<"ride-cymbal" | "hi-hat", Count>> = Object.freeze({
  "ride-cymbal": 51,
  "hi-hat": 44,
});
