import type { Count } from "../base/index.ts";

/** What can be undone and redone; a plain value that can be saved. */
export interface History<T> {
  /** Oldest first. */
  readonly past: readonly T[];
  readonly present: T;
  /** Next redo first. */
  readonly future: readonly T[];
  /** Steps kept at most; the oldest go first. */
  readonly limit: Count;
}

/** Steps of undo kept unless said otherwise. */
export const historyLimit: Count = 1000;

/**
 * Starts a history.
 * @param first - the present
 * @param limit - steps kept at most
 * @returns a history with nothing to undo
 */
export function createHistory<T>(first: T, limit: Count = historyLimit): History<T> {
  return { past: [], present: first, future: [], limit };
}

/**
 * Takes a step.
 * @param history - so far
 * @param next - the new present
 * @returns the history with the step; what could be redone is gone
 */
export function record<T>(history: History<T>, next: T): History<T> {
  const past = [...history.past, history.present].slice(-history.limit);
  return { ...history, past, present: next, future: [] };
}

/**
 * Goes one step back.
 * @param history - so far
 * @returns the step before; the same history when there is none
 */
export function undo<T>(history: History<T>): History<T> {
  const before = history.past[history.past.length - 1];
  if (history.past.length === 0) return history;
  return {
    ...history,
    past: history.past.slice(0, -1),
    present: before as T,
    future: [history.present, ...history.future],
  };
}

/**
 * Goes one step forward again.
 * @param history - so far
 * @returns the step after; the same history when there is none
 */
export function redo<T>(history: History<T>): History<T> {
  if (history.future.length === 0) return history;
  return {
    ...history,
    past: [...history.past, history.present],
    present: history.future[0] as T,
    future: history.future.slice(1),
  };
}
