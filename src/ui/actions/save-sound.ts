import { createStore, useStore } from "zustand";
import { session } from "../store.ts";
import { announce } from "./announce.ts";
import { fileNameOf, handOver } from "./hand-over.ts";
import { hearingNow, inView, turnsOf } from "./hear.ts";
import { playback } from "./sound-door.ts";
import { scored, thisOne, type Piece } from "./sound-piece.ts";
import { sound, type Way } from "./sound-state.ts";

/** A recording being made. */
export interface Saving {
  readonly fileName: string;
  /** 0 to 1. */
  readonly share: number;
}

/** What is being saved. */
const saving = createStore<{ readonly now: Saving | null }>()(() => ({ now: null }));

/**
 * Reads the recording that is being made.
 * @returns the recording, or null
 */
export function useSaving(): Saving | null {
  return useStore(saving, (state) => state.now);
}

let stopSaving: AbortController | null = null;

/** Saves the sound of the voicing in view, the way it was heard last. */
export function saveView(): void {
  const heard = inView();
  if (heard === null) return;
  const hearing = hearingNow();
  const { inquiry } = session();
  const name = soundFileName([inquiry.chordText, inquiry.melodyText], hearing.way);
  void save({ turns: [{ name: thisOne, ...heard }], hearing }, name);
}

/** Saves the sound of all kept voicings, one after the other. */
export function saveKept(): void {
  const { kept } = session();
  const hearing = hearingNow();
  const letters = kept.map(({ letter }) => letter);
  const named = letters.length > 6 ? [letters[0] ?? "", "to", letters.at(-1) ?? ""] : letters;
  void save({ turns: turnsOf(kept), hearing }, soundFileName(["kept", ...named], hearing.way));
}

/** Gives up the recording that is being made; nothing is saved. */
export function cancelSaving(): void {
  stopSaving?.abort();
}

/**
 * A file's name that tells what is in it and is safe on every system.
 * @param words - what it holds, as typed by the user
 * @param way - way of hearing
 * @returns such as "hornweave-F13-D5-sustained.wav"
 */
export function soundFileName(words: readonly string[], way: Way): string {
  return fileNameOf([...words, way], "wav");
}

async function save(piece: Piece, fileName: string): Promise<void> {
  cancelSaving();
  const mine = new AbortController();
  stopSaving = mine;
  saving.setState({ now: { fileName, share: 0 } });
  const outcome = await record(piece, fileName, mine.signal);
  if (stopSaving !== mine) return;
  stopSaving = null;
  saving.setState({ now: null });
  announce(outcome);
}

/** Renders and hands the file over; says what became of it. */
async function record(piece: Piece, fileName: string, signal: AbortSignal): Promise<string> {
  const { plan } = await scored(piece, sound.getState().isMatched);
  if (plan.events.length === 0) return "None of the players chosen to be heard sounds here.";
  const [player, { encodeWav }] = await Promise.all([playback(), import("../../files/index.ts")]);
  const rendered = await player.render(plan, {
    signal,
    onProgress: (share) => {
      if (!signal.aborted) saving.setState({ now: { fileName, share } });
    },
  });
  if (!rendered.ok) return rendered.problem.message;
  if (signal.aborted || !rendered.value.isWhole) return "Nothing was saved.";
  const { left, right, sampleRate } = rendered.value;
  handOver(encodeWav([left, right], { sampleRate }), fileName, "audio/wav");
  return `Saved as ${fileName}.`;
}
