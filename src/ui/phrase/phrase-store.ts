import { createStore, useStore } from "zustand";
import type { PhraseWork } from "../../explore/index.ts";
import type {
  Phrase,
  PhraseAlternative,
  PhraseAnswer,
  PhrasePerformance,
} from "../../phrase/index.ts";
import type { MelodyProblem } from "../../theory/index.ts";

/** A phrase that could be read, its voicings so far and how they are played. */
export interface PhraseInView {
  /** What was asked; an answer belongs to exactly this work. */
  readonly work: PhraseWork;
  readonly phrase: Phrase;
  readonly answer: PhraseAnswer;
  readonly performance: PhrasePerformance;
  /** False while a better answer is still searched for. */
  readonly isWhole: boolean;
}

/** One player at one moment. */
export interface PhrasePlace {
  readonly momentId: string;
  /** Null: the whole moment. */
  readonly playerId: string | null;
}

/** What the phrase view shows beside the session. */
export interface PhraseState {
  /** The last answer; stays while the next one is searched. */
  readonly view: PhraseInView | null;
  /** Moments done and all moments of a running search; null when none runs. */
  readonly searching: { readonly done: number; readonly all: number } | null;
  /** Other answers for the whole phrase; null until asked for. */
  readonly alternatives: readonly PhraseAlternative[] | null;
  readonly problems: readonly MelodyProblem[];
  readonly fault: string | null;
  /** Where the user is. */
  readonly place: PhrasePlace | null;
}

/** State of the phrase view. */
export const phraseStore = createStore<PhraseState>()(() => ({
  view: null,
  searching: null,
  alternatives: null,
  problems: [],
  fault: null,
  place: null,
}));

/**
 * Reads a part of the phrase view's state in a component.
 * @param pick - the part
 * @returns the part
 */
export function usePhrase<T>(pick: (state: PhraseState) => T): T {
  return useStore(phraseStore, pick);
}
