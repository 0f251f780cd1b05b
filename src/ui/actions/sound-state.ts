import { createStore, useStore } from "zustand";
import type { Manner } from "../../audio/index.ts";

/** Ways to hear a voicing that the page offers. */
export type Way = Extract<
  Manner,
  "hit" | "sustained" | "rolled-from-bottom" | "section-by-section"
>;

/** What the page knows of its sound. */
export interface SoundState {
  readonly phase: "silent" | "starting" | "sounding";
  /** Why there is no sound, in one sentence. */
  readonly blocked: string | null;
  /** The way used last; Space uses it again. */
  readonly last: Way;
  readonly hasSounded: boolean;
  readonly isMatched: boolean;
  readonly withBass: boolean;
  /** What level-matching did to the sound heard last, dB (LU). */
  readonly matchedBy: number | null;
  /** Players who sound at this moment. */
  readonly sounding: readonly string[];
  /** What sounds, in turn: a letter, or "this". */
  readonly turn: string | null;
}

/** Apart from the page's state: it changes while a sound goes by, and is nothing to undo. */
export const sound = createStore<SoundState>()(() => ({
  phase: "silent",
  blocked: null,
  last: "hit",
  hasSounded: false,
  isMatched: false,
  withBass: false,
  matchedBy: null,
  sounding: [],
  turn: null,
}));

/**
 * Reads a part of the sound's state in a component.
 * @param pick - the part
 * @returns the part
 */
export function useSound<T>(pick: (state: SoundState) => T): T {
  return useStore(sound, pick);
}
