import type { Frames } from "./audio-units.ts";

/**
 * One dry note of one player at 1 m, rendered from its start as far as someone asks. It can be
 * left half-way and taken up again, and what is rendered never changes.
 */
export interface NoteVoice {
  /** The whole note, mono, digital units; zero beyond what has been rendered. */
  readonly samples: Float32Array;
  /** Renders at least up to this frame, or to the end. */
  renderTo(frame: Frames): void;
}
