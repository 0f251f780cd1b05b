import { fileNameOf, handOver } from "../../actions/hand-over.ts";
import { phraseStore } from "../phrase-store.ts";

/** Kinds of file that are made at once. */
export type PhraseFile = "musicxml" | "mxl" | "mid" | "abc";

/** What a file of the phrase shows. */
export interface PhraseLook {
  /** Parts as players read them, or all at concert pitch. */
  readonly pitch: "written" | "concert";
  /** MIDI as it is heard here, or even for a program that swings by itself. */
  readonly timing: "played" | "written";
  /** Whether bass, piano and drums are in it. */
  readonly hasRhythm: boolean;
}

const types: Readonly<Record<PhraseFile, string>> = Object.freeze({
  musicxml: "application/vnd.recordare.musicxml+xml",
  mxl: "application/vnd.recordare.musicxml",
  mid: "audio/midi",
  abc: "text/vnd.abc",
});

/**
 * Makes a file of the phrase in view and hands it over.
 * @param kind - which kind
 * @param look - what it shows
 * @returns what became of it, one sentence
 */
export async function savePhrase(kind: PhraseFile, look: PhraseLook): Promise<string> {
  const { view } = phraseStore.getState();
  if (view === null) return "There is no answer yet: wait until the phrase is voiced.";
  const { phrase, performance, work } = view;
  const { title } = phrase.melody;
  const name = fileNameOf([title], kind);
  try {
    const files = await import("../../../files/index.ts");
    const xml = () =>
      files.musicXmlOfPhrase(phrase, performance, {
        pitch: look.pitch,
        rhythm: look.hasRhythm ? ["bass", "piano"] : [],
      });
    const made = {
      musicxml: xml,
      mxl: () => files.writeMxl(xml()),
      mid: () =>
        files.midiOfPhrase(phrase, performance, {
          timing: look.timing,
          rhythm: look.hasRhythm ? ["bass", "piano", "drums"] : [],
        }),
      abc: () => files.writeAbc(work.question.melody),
    };
    handOver(made[kind](), name, types[kind]);
    return `Saved as ${name}.`;
  } catch {
    return "The file could not be made: reload the page, then save it again.";
  }
}
