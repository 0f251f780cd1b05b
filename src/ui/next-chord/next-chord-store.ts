import { createStore, useStore } from "zustand";
import type { Continuation, Speed } from "../../phrase/index.ts";

/** What the page knows of the step into the next chord; nothing of it is a step to undo. */
export interface NextChordState {
  /** Whether the other chord comes after the voicing in view or before it. */
  readonly isAfter: boolean;
  /** Chord, melody and direction that what is typed was meant for. */
  readonly meantFor: string;
  /** As typed. */
  readonly chordText: string;
  readonly melodyText: string;
  readonly speed: Speed;
  /** Found for what is typed, or for what could be read last. */
  readonly found: readonly Continuation[];
  /** Chord and melody that `found` answers. */
  readonly answered: { readonly chordText: string; readonly melodyText: string } | null;
  /** Which of them is in view. */
  readonly picked: Continuation["id"];
  /** What is wrong with what is typed, one sentence; empty when nothing is. */
  readonly problem: string;
  readonly isLooped: boolean;
}

export const nextChord = createStore<NextChordState>()(() => ({
  isAfter: true,
  meantFor: "",
  chordText: "",
  melodyText: "",
  speed: "slow",
  found: [],
  answered: null,
  picked: "smoothest",
  problem: "",
  isLooped: false,
}));

/**
 * Reads a part of it in a component.
 * @param pick - the part
 * @returns the part
 */
export function useNextChord<T>(pick: (state: NextChordState) => T): T {
  return useStore(nextChord, pick);
}
