import { createStore, useStore } from "zustand";
import { readAbc } from "../../../files/index.ts";
import type { MelodyProblem } from "../../../theory/index.ts";
import { session } from "../../store.ts";
import { changeWork } from "../phrase-actions.ts";
import { withMelody, withOldNames } from "../with-melody.ts";

/** What is to be said about the text as it stands. */
export interface TextReading {
  readonly text: string;
  readonly problems: readonly MelodyProblem[];
  readonly remarks: readonly string[];
}

const reading = createStore<TextReading>()(() => ({ text: "", problems: [], remarks: [] }));

/** What is to be said about the text. */
export function useTextReading(): TextReading {
  return useStore(reading);
}

const step = "melody as text";
const field = "phrase-text";

/**
 * Takes the melody as it is being typed: what can be read becomes the melody, what cannot stays as
 * typed beside the last melody that could.
 * @param typed - the whole text
 */
export async function typeMelody(typed: string): Promise<void> {
  changeWork({ typed }, step, field);
  const melody = await lookAt(typed);
  const { phrase } = session();
  if (melody === undefined || phrase?.typed !== typed) return;
  const named = withOldNames(melody, phrase.question.melody);
  changeWork({ ...withMelody(phrase, named), typed }, step, field);
}

/**
 * Says what is wrong with a text without taking it.
 * @param text - the whole text
 * @returns its melody; undefined when it cannot be read
 */
export async function lookAt(text: string) {
  if (text.trim() === "") {
    reading.setState({ text, problems: [], remarks: [] });
    return undefined;
  }
  const read = await readAbc(text);
  if (session().phrase?.typed !== text) return undefined;
  reading.setState(
    read.ok
      ? { text, problems: [], remarks: read.value.remarks }
      : { text, problems: read.problems, remarks: [] },
  );
  return read.ok ? read.value.melody : undefined;
}
