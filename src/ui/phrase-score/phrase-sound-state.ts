import { createStore, useStore } from "zustand";
import type { Divisions } from "../../theory/index.ts";

/** Bars that are played over and over, both included; the pickup is bar 0. */
export interface LoopBars {
  readonly fromBar: number;
  readonly toBar: number;
}

/** What the page knows of the sound of the phrase. */
export interface PhraseSoundState {
  readonly phase: "silent" | "starting" | "sounding";
  /** Why there is no sound, in one sentence. */
  readonly blocked: string | null;
  /** Left out, by id; "bass", "piano" and "drums" are players too. */
  readonly silentIds: readonly string[];
  /** Heard alone; empty for everybody. */
  readonly aloneIds: readonly string[];
  readonly isCounted: boolean;
  readonly isLooped: boolean;
  /** Null: the whole phrase. */
  readonly bars: LoopBars | null;
  /** Equally loud as the other answers, or as loud as it is. */
  readonly isMatched: boolean;
  /** What level-matching does to the sound heard now or last, dB (LU). */
  readonly matchedBy: number | null;
  /** The moment that sounds now; null in silence, rests and the count-in. */
  readonly momentId: string | null;
  /** A beat is counted before the music. */
  readonly isCounting: boolean;
}

/** Apart from the page's state: it changes while a sound goes by, and is nothing to undo. */
export const phraseSound = createStore<PhraseSoundState>()(() => ({
  phase: "silent",
  blocked: null,
  silentIds: [],
  aloneIds: [],
  isCounted: false,
  isLooped: false,
  bars: null,
  isMatched: false,
  matchedBy: null,
  momentId: null,
  isCounting: false,
}));

/**
 * Reads a part of the phrase's sound in a component.
 * @param pick - the part
 * @returns the part
 */
export function usePhraseSound<T>(pick: (state: PhraseSoundState) => T): T {
  return useStore(phraseSound, pick);
}

/** Hears where the music stands; null in silence. */
export type CursorListener = (at: Divisions | null) => void;

const listeners = new Set<CursorListener>();
let last: Divisions | null = null;

/**
 * Hears where the music stands, once a frame while it sounds. What listens changes a transform and
 * nothing that has the page laid out anew.
 * @param listener - is told at once where it stands
 * @returns stops listening
 */
export function onCursor(listener: CursorListener): () => void {
  listeners.add(listener);
  listener(last);
  return () => listeners.delete(listener);
}

/** Tells everybody where the music stands. */
export function tellCursor(at: Divisions | null): void {
  if (at === last) return;
  last = at;
  for (const listener of listeners) listener(at);
}
