import { createStore, useStore } from "zustand";
import type { Manner } from "../../audio/index.ts";
import { isCautionKnown } from "./caution.ts";

/** Ways to hear a voicing. */
export type Way = Manner;

/** What sounds under the horns. */
export type Backing = "horns" | "bass" | "bass-piano" | "rhythm";

/** Who is to be heard. */
export interface Who {
  /** Who stands out; empty for everybody. */
  readonly playerIds: readonly string[];
  /** What the others do meanwhile: nothing, or the same 12 dB softer. */
  readonly others: "silent" | "softer";
}

/** Everybody, as written. */
export const everybody: Who = Object.freeze({ playerIds: Object.freeze([]), others: "silent" });

/** What the page knows of its sound. */
export interface SoundState {
  readonly phase: "silent" | "starting" | "sounding";
  /** Why there is no sound, in one sentence. */
  readonly blocked: string | null;
  /** The way used last; Space uses it again. */
  readonly last: Way;
  /** Who was heard last; Space hears them again. */
  readonly lastWho: Who;
  /** Who is heard from now on. */
  readonly who: Who;
  readonly backing: Backing;
  readonly hasSounded: boolean;
  /** Whether the caution about headphones has been given, at this visit or an earlier one. */
  readonly isCautioned: boolean;
  readonly isMatched: boolean;
  /** What level-matching does to the sound heard now or last, dB (LU). */
  readonly matchedBy: number | null;
  /** Players of the voicing in view who sound at this moment. */
  readonly sounding: readonly string[];
  /** What sounds, in turn: a letter, or "this". */
  readonly turn: string | null;
}

/** Apart from the page's state: it changes while a sound goes by, and is nothing to undo. */
export const sound = createStore<SoundState>()(() => ({
  phase: "silent",
  blocked: null,
  last: "hit",
  lastWho: everybody,
  who: everybody,
  backing: "horns",
  hasSounded: false,
  isCautioned: isCautionKnown(),
  isMatched: false,
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
