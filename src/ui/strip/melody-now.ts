import type { SoundingMidi } from "../../base/index.ts";
import { readPitch } from "../../theory/index.ts";
import { pickMelody } from "../actions/ask.ts";
import { session, usePage } from "../store.ts";

function pitchOf(text: string): SoundingMidi | undefined {
  const read = readPitch(text);
  return read.ok ? read.value.sounding : undefined;
}

/**
 * The melody note as typed, whether it is answered yet or not.
 * @returns sounding pitch; undefined while the text cannot be read
 */
export function useMelody(): SoundingMidi | undefined {
  return usePage((state) => pitchOf(state.history.present.inquiry.melodyText));
}

const keys: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: 12,
  PageDown: -12,
};

/**
 * Steps the melody note by a key: arrows a semitone, page keys an octave.
 * @param key - name of the key pressed
 * @param ends - lowest and highest note to step to, MIDI
 * @param more - further keys and what they step by, semitones
 * @returns whether the key was one of these
 */
export function stepMelody(
  key: string,
  ends: { readonly low: number; readonly high: number },
  more: Readonly<Record<string, number>> = {},
): boolean {
  const by = keys[key] ?? more[key];
  const now = pitchOf(session().inquiry.melodyText);
  if (by === undefined || now === undefined) return false;
  const to = now + by;
  if (to >= ends.low && to <= ends.high) pickMelody(to as SoundingMidi);
  return true;
}
