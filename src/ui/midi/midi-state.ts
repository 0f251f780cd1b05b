import { createStore, useStore } from "zustand";
import type { MidiPortInfo } from "../../playback/index.ts";

/** What the page knows of the MIDI devices of this computer. */
export interface MidiState {
  /** Nothing is asked of the browser before the user connects. */
  readonly phase: "off" | "asking" | "open";
  /** Why there is no MIDI, or what is wrong with a device, in one sentence. */
  readonly problem: string | null;
  readonly inputs: readonly MidiPortInfo[];
  readonly outputs: readonly MidiPortInfo[];
  /** The keyboard that is heard; none unless chosen. */
  readonly inputId: string | null;
  /** Where voicings are sent; nowhere unless chosen. */
  readonly outputId: string | null;
  /** What was played last and what became of it, in words. */
  readonly played: string | null;
  /** Takes each key that is played instead of the one-chord page; null: nobody does. */
  readonly taker: ((sounding: number) => void) | null;
}

/** Apart from the page's state: devices are nothing to undo. */
export const midi = createStore<MidiState>()(() => ({
  phase: "off",
  problem: null,
  inputs: [],
  outputs: [],
  inputId: null,
  outputId: null,
  played: null,
  taker: null,
}));

/**
 * Reads a part of the MIDI state in a component.
 * @param pick - the part
 * @returns the part
 */
export function useMidi<T>(pick: (state: MidiState) => T): T {
  return useStore(midi, pick);
}
