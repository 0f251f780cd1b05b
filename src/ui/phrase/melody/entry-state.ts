import { createStore, useStore } from "zustand";

/** Note values that can be entered, by their share of a whole note. */
export const values = [1, 2, 4, 8, 16] as const;

/** 4 is a quarter note. */
export type Value = (typeof values)[number];

/** Where the next note goes on the staff, and how long it is. */
export interface EntryState {
  /** In quarter notes from the start, so that it stays put when the melody is counted more finely. */
  readonly at: number;
  readonly value: Value;
  readonly isDotted: boolean;
  readonly isTriplet: boolean;
  /** Chord being typed, by its time in quarter notes; null while none is. */
  readonly chordAt: number | null;
}

/** Apart from the session: a cursor is nothing to undo. */
export const entry = createStore<EntryState>()(() => ({
  at: 0,
  value: 8,
  isDotted: false,
  isTriplet: false,
  chordAt: null,
}));

/**
 * Reads a part of the entry's state in a component.
 * @param pick - the part
 * @returns the part
 */
export function useEntry<T>(pick: (state: EntryState) => T): T {
  return useStore(entry, pick);
}

/**
 * Length of what is entered.
 * @param state - value, dot, triplet
 * @returns quarter notes
 */
export function entryLength({
  value,
  isDotted,
  isTriplet,
}: Pick<EntryState, "value" | "isDotted" | "isTriplet">): number {
  const plain = (4 / value) * (isDotted ? 1.5 : 1);
  return isTriplet ? (plain * 2) / 3 : plain;
}
