import { createStore, useStore } from "zustand";
import type { Db, Hertz } from "../../base/index.ts";
import { session } from "../store.ts";
import { announce } from "./announce.ts";
import { fileNameOf } from "./hand-over.ts";
import { hearingNow, inView, type HeardTurn } from "./hear.ts";
import { playback } from "./sound-door.ts";
import { scored, thisOne, type Piece } from "./sound-piece.ts";
import { sound } from "./sound-state.ts";
import { openWavTarget, type WavTarget } from "./wav-target.ts";

/** A recording being made. */
export interface Saving {
  readonly fileName: string;
  /** 0 to 1. */
  readonly share: number;
}

/** What is being saved, and what became of the last one. */
const saving = createStore<{ readonly now: Saving | null; readonly outcome: string }>()(() => ({
  now: null,
  outcome: "",
}));

/** Sampling rate of what the player renders. */
const sampleRate = 48_000 as Hertz;

const nothingSaved = "Nothing was saved.";

/**
 * Reads the recording that is being made.
 * @returns the recording, or null
 */
export function useSaving(): Saving | null {
  return useStore(saving, (state) => state.now);
}

/**
 * Reads what became of the recording made last.
 * @returns one sentence; empty before the first and while one is made
 */
export function useSavingOutcome(): string {
  return useStore(saving, (state) => state.outcome);
}

/** Forgets what became of the last recording. */
export function forgetOutcome(): void {
  saving.setState({ outcome: "" });
}

let stopSaving: AbortController | null = null;

/** Saves the sound of the voicing in view, the way it was heard last. */
export function saveView(): void {
  const heard = inView();
  if (heard === null) return;
  const { inquiry } = session();
  void saveSound([{ name: thisOne, ...heard }], [inquiry.chordText, inquiry.melodyText]);
}

/**
 * Saves the sound of voicings, one after the other, the way they are heard.
 * @param turns - in order
 * @param words - what the file's name says of them
 * @returns when it is saved, or given up, or failed
 */
export async function saveSound(
  turns: readonly HeardTurn[],
  words: readonly string[],
): Promise<void> {
  const hearing = hearingNow();
  const name = fileNameOf([...words, hearing.way], "wav");
  cancelSaving();
  const mine = new AbortController();
  stopSaving = mine;
  saving.setState({ now: { fileName: name, share: 0 }, outcome: "" });
  const outcome = await record({ turns, hearing }, name, mine.signal);
  if (stopSaving !== mine) return;
  stopSaving = null;
  saving.setState({ now: null, outcome });
  announce(outcome);
}

/** Gives up the recording that is being made; nothing is saved. */
export function cancelSaving(): void {
  stopSaving?.abort();
}

/** Asks where, renders, hands the file over; says what became of it. */
async function record(piece: Piece, name: string, signal: AbortSignal): Promise<string> {
  const target = await openWavTarget(name);
  if (target === null || signal.aborted) return nothingSaved;
  try {
    const failure = await fill(target, piece, name, signal);
    if (failure === null) {
      await target.finish();
      return `Saved as ${name}.`;
    }
    await target.giveUp();
    return failure;
  } catch (reason) {
    await target.giveUp().catch(() => undefined);
    return faultWords(reason);
  }
}

/** Renders into the target; says why that did not come to an end, or null when it did. */
async function fill(
  target: WavTarget,
  piece: Piece,
  name: string,
  signal: AbortSignal,
): Promise<string | null> {
  const { plan } = await scored(piece, sound.getState().isMatched);
  if (plan.events.length === 0) return "None of the players chosen to be heard sounds here.";
  const [player, { renderWav }] = await Promise.all([playback(), import("../../files/index.ts")]);
  let fault: unknown;
  const written = await renderWav([{ plan, gain: 0 as Db }], {
    render: (...asked) => player.renderInto(...asked),
    sampleRate,
    signal,
    sink: async (bytes) => {
      try {
        await target.write(bytes);
      } catch (reason) {
        fault = reason;
        throw reason;
      }
    },
    onProgress: (share) => {
      if (!signal.aborted) saving.setState({ now: { fileName: name, share } });
    },
  });
  if (fault !== undefined) return faultWords(fault);
  if (!written.ok) return written.problem.message;
  return written.value ? null : nothingSaved;
}

function faultWords(reason: unknown): string {
  if (reason instanceof DOMException && reason.name === "QuotaExceededError")
    return "There is no room left for the file: free some, or save to another place.";
  return "The file could not be written: save it to another place.";
}
